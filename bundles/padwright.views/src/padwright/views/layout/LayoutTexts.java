package padwright.views.layout;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.language.edit.SystemEdits;
import padwright.language.edit.SystemWords;
import padwright.language.edit.TextEdit;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Rod;
import padwright.model.keysystem.Titled;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveRod;
import padwright.model.systems.EffectiveSystem;
import padwright.model.systems.EffectiveTouch;

/** What is drawn in a layout as edits of its text. */
final class LayoutTexts {

	private static final Length ROD = Length.millimetres("20");

	private final Layout layout;
	private final EffectiveSystem all;
	private final SystemEdits edits;
	private final SystemWords words;

	LayoutTexts(Layout layout) {
		this.layout = layout;
		KeySystem system = layout.system().orElseThrow();
		all = EffectiveSystem.of(system);
		edits = new SystemEdits(system);
		words = new SystemWords(system);
	}

	/** Items at other places than in the layout. */
	List<TextEdit> moved(List<LayoutItem> now) {
		Map<Titled, Map<String, String>> clauses = new LinkedHashMap<>();
		for (LayoutItem item : now) {
			Map<String, String> changed = moved(layout.item(item.id()).orElseThrow(), item);
			if (!changed.isEmpty()) {
				clauses.put(item.placed(), changed);
			}
		}
		return edits.putAll(clauses);
	}

	private Map<String, String> moved(LayoutItem from, LayoutItem to) {
		Map<String, String> clauses = new LinkedHashMap<>();
		if (!to.along().equals(from.along())) {
			if (to.thing() instanceof Rod rod) {
				moved(all.rod(rod).orElseThrow(), from, to, clauses);
			} else {
				place(to.along().orElseThrow(), joint(to.placed()), clauses);
			}
		}
		if (to.around().compareTo(from.around()) != 0) {
			clauses.put("around", around(to.around()));
		}
		return clauses;
	}

	private void moved(EffectiveRod rod, LayoutItem from, LayoutItem to, Map<String, String> clauses) {
		Length start = rod.joint().map(joint -> start(joint.definition())).orElse(Length.ZERO);
		Length upper = notAbove(rod.from().filter(said -> from.along().isPresent())
				.map(said -> said.plus(to.along().orElseThrow().minus(from.along().orElseThrow())))
				.orElseGet(() -> to.along().orElseThrow().minus(start).minus(to.reach())));
		Length whole = rod.from().flatMap(said -> rod.to().map(end -> end.minus(said)))
				.orElseGet(() -> to.reach().times(2));
		clauses.put("from", "from " + words.length(upper));
		clauses.put("to", "to " + words.length(upper.plus(whole)));
	}

	private static Length notAbove(Length position) {
		return position.signum() < 0 ? Length.ZERO : position;
	}

	private Length start(Titled joint) {
		return layout.joints().stream().filter(each -> each.joint().filter(joint::equals).isPresent())
				.map(LayoutJoint::start).findFirst().orElse(Length.ZERO);
	}

	private Optional<EffectiveJoint> joint(Titled thing) {
		return thing instanceof Key key ? all.key(key).flatMap(EffectiveKey::joint)
				: thing instanceof Hole hole ? all.hole(hole).flatMap(EffectiveHole::joint)
						: all.touch((Touch) thing).flatMap(EffectiveTouch::joint);
	}

	private void place(Length along, Optional<EffectiveJoint> said, Map<String, String> clauses) {
		LayoutJoint here = layout.jointAt(along);
		if (here.joint().isPresent() && !here.joint().equals(said.map(EffectiveJoint::definition))) {
			clauses.put("joint", "on " + words.name(here.joint().get()));
		}
		clauses.put("position", "at " + words.length(notAbove(along.minus(here.start()))));
	}

	private static String around(BigDecimal angle) {
		return "around " + SystemWords.number(angle);
	}

	/** A new thing at a place, under a name that is free; a cup over the hole, a rod under the keys that are chosen. */
	List<TextEdit> added(LayoutKind kind, String name, Length along, BigDecimal angle, Set<String> chosen) {
		Map<String, String> place = new LinkedHashMap<>();
		place(along, all.mainJoint(), place);
		String where = String.join(" ", place.values()) + (angle.signum() == 0 ? "" : " " + around(angle));
		String named = words.name(name);
		return switch (kind) {
		case HOLE -> edits.add(Hole.class, "hole " + named + " " + words.length(Length.millimetres("7")) + " " + where);
		case TOUCH -> edits.add(Touch.class, "touch " + named + " " + where);
		case LEVER -> edits.add(Key.class, "key " + named + " " + where);
		case KEY -> edits.add(Key.class, "key " + named + " open " + new UsualKey(all, words).like(along, layout) + " "
				+ where);
		case CUP -> edits.add(Key.class, "key " + named + " open " + cup(chosen).orElse("cup "
				+ words.length(Length.millimetres("10")) + " " + where));
		case ROD -> edits.add(Rod.class, "rod " + named + " " + rod(along, angle, chosen));
		};
	}

	private Optional<String> cup(Set<String> chosen) {
		return chosen.stream().flatMap(id -> layout.item(id).stream()).filter(item -> item.kind() == LayoutKind.HOLE)
				.findFirst().map(hole -> "over " + words.name(hole.thing()) + " cup "
						+ words.length(hole.hole().orElseThrow().plus(Length.millimetres("3"))));
	}

	private String rod(Length along, BigDecimal angle, Set<String> chosen) {
		List<LayoutItem> keys = chosen.stream().flatMap(id -> layout.item(id).stream()).filter(LayoutItem::isKey)
				.filter(key -> key.along().isPresent())
				.sorted(Comparator.comparing(key -> key.along().orElseThrow())).toList();
		Length upper = keys.stream().map(key -> key.along().get().minus(key.reach())).min(Length::compareTo)
				.orElse(along.minus(ROD));
		Length lower = keys.stream().map(key -> key.along().get().plus(key.reach())).max(Length::compareTo)
				.orElse(along.plus(ROD));
		LayoutJoint joint = layout.jointAt(notAbove(upper));
		String carries = keys.isEmpty() ? "" : keys.stream().map(key -> words.name(key.thing()))
				.collect(Collectors.joining(", ", " carries ", ""));
		String on = joint.joint().isEmpty() || joint.joint().equals(all.mainJoint().map(EffectiveJoint::definition))
				? "" : "on " + words.name(joint.joint().get()) + " ";
		return on + "from " + words.length(notAbove(upper.minus(joint.start()))) + " to "
				+ words.length(lower.minus(joint.start())) + " " + around(angle) + carries;
	}

	/** A name that nothing of the system has, with a number behind it. */
	String freeName(String begin) {
		Set<String> taken = taken();
		int number = 1;
		while (taken.contains(begin + number)) {
			number++;
		}
		return begin + number;
	}

	/** A name, with a number where something of the system has it. */
	String unlike(String name) {
		return taken().contains(name) ? freeName(name) : name;
	}

	private Set<String> taken() {
		return Stream.of(all.keys(), all.holes(), all.touches(), all.rods(), all.joints())
				.flatMap(part -> part.stream()).map(part -> part.name()).collect(Collectors.toSet());
	}

	/** Has one thing move, or cover, another. */
	List<TextEdit> linked(LayoutLink link) {
		Titled from = layout.item(link.from()).orElseThrow().thing();
		Titled to = layout.item(link.to()).orElseThrow().thing();
		if (link.kind() == LayoutLink.Kind.PRESSES) {
			return to instanceof Hole hole ? edits.cover((Touch) from, hole) : edits.press((Touch) from, (Key) to);
		}
		return edits.couple((Key) from, (Key) to, LinkFeatures.of(link.kind()));
	}

	List<TextEdit> deleted(List<Titled> things) {
		return edits.delete(things);
	}

	List<TextEdit> asInherited(List<Titled> things) {
		return edits.asInherited(things);
	}

	List<TextEdit> added(Class<? extends EObject> kind, String statement) {
		return edits.add(kind, statement);
	}

	List<TextEdit> together(List<TextEdit> several) {
		return edits.together(several);
	}

	String quoted(String name) {
		return words.name(name);
	}
}
