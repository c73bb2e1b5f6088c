package padwright.paper.system;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.emf.common.util.Enumerator;

import padwright.engine.diagnosis.NoteFingering;
import padwright.model.Present;
import padwright.model.keysystem.Adjuster;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Posture;
import padwright.model.keysystem.Touch;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanFactory;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageFact;
import padwright.paper.sheet.LayoutSheet;
import padwright.paper.sheet.SheetCoupling;
import padwright.paper.sheet.SheetKey;
import padwright.paper.sheet.SheetNote;
import padwright.workup.diagnosis.SystemNotes;
import padwright.workup.parts.Labels;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.ClockWords;

/** The key-layout sheet of a key system, with all that it inherits. */
public final class SystemSheet {

	private static final String TITLE = "Key layout";

	private final KeySystem system;
	private final ServicePlan plan;
	private final List<EffectiveKey> keys;

	private SystemSheet(KeySystem system) {
		this.system = system;
		Plan empty = PlanFactory.eINSTANCE.createPlan();
		empty.setSystem(system);
		this.plan = new ServicePlan(empty);
		this.keys = List.copyOf(plan.system().keys());
	}

	/**
	 * The sheet.
	 *
	 * @param revision what tells this sheet from others of the system, if anything
	 * @param date as it is to be printed, if at all
	 * @throws IllegalArgumentException if the system has no key, or keys close each other in a circle
	 */
	public static LayoutSheet of(KeySystem system, Optional<String> revision, Optional<String> date) {
		return new SystemSheet(system).sheet(revision, date);
	}

	private LayoutSheet sheet(Optional<String> revision, Optional<String> date) {
		String subline = TITLE + " · " + system.getName() + date.map(day -> " · " + day).orElse("");
		String right = revision.map(text -> "revision " + text).orElse("");
		HeadText head = new HeadText(Labels.of(system), right, subline, facts());
		return new LayoutSheet(head, TITLE + ", " + Labels.of(system), ClockWords.twelveLooksAt(system),
				keys.stream().map(SystemSheet::key).toList(), couplings(), notes());
	}

	private List<PageFact> facts() {
		List<PageFact> facts = new ArrayList<>();
		facts.add(new PageFact("Pads", String.valueOf(keys.size())));
		Present.of(system.getBase()).ifPresent(base -> facts.add(new PageFact("Extends", Labels.of(base))));
		return facts;
	}

	private static SheetKey key(EffectiveKey key) {
		return new SheetKey(key.name(), key.label(), key.posture() == Posture.CLOSED, touches(key),
				key.holeDiameter(), key.rimWidth(), word(key.holeMake()), key.cupDiameter(), key.cupDepth(),
				word(key.cupStyle()), word(key.hinge()), key.joint().map(EffectiveJoint::label).orElse(""), key.position());
	}

	private static String touches(EffectiveKey key) {
		return key.touches().stream().flatMap(touch -> Present.of(touch).stream()).map(Touch::getName)
				.collect(Collectors.joining(", "));
	}

	private static String word(Optional<? extends Enumerator> value) {
		return value.map(Enumerator::getLiteral).orElse("");
	}

	private List<SheetCoupling> couplings() {
		List<SheetCoupling> couplings = new ArrayList<>();
		for (int driver = 0; driver < keys.size(); driver++) {
			for (Coupling coupling : keys.get(driver).closes()) {
				int driven = index(coupling.getDriven());
				if (driven >= 0) {
					couplings.add(new SheetCoupling(driver, driven, adjuster(coupling)));
				}
			}
		}
		return couplings;
	}

	/** The place of a key in the system; -1 for a broken link or a key that was removed. */
	private int index(Key definition) {
		return IntStream.range(0, keys.size()).filter(key -> keys.get(key).definition() == definition).findFirst()
				.orElse(-1);
	}

	private static String adjuster(Coupling coupling) {
		List<String> words = new ArrayList<>();
		Optional.ofNullable(coupling.getAdjuster()).ifPresent(adjuster -> words.add(words(adjuster)));
		Optional.ofNullable(coupling.getRatio()).ifPresent(ratio -> words.add("ratio " + ratio.toPlainString()));
		return String.join(", ", words);
	}

	private static String words(Adjuster adjuster) {
		StringBuilder words = new StringBuilder(adjuster.getKind().getLiteral());
		Optional.ofNullable(adjuster.getThread()).ifPresent(thread -> words.append(' ').append(thread));
		Optional.ofNullable(adjuster.getPitch()).ifPresent(pitch -> words.append(" of pitch ").append(pitch));
		return words.toString();
	}

	private List<SheetNote> notes() {
		Map<String, Set<String>> closed = new SystemNotes(plan).all().stream()
				.collect(Collectors.toMap(NoteFingering::note, NoteFingering::closedPads, (one, same) -> one));
		Map<String, SheetNote> notes = new LinkedHashMap<>();
		plan.system().fingerings().forEach((note, fingerings) -> {
			for (int number = 1; number <= fingerings.size(); number++) {
				String name = name(note, fingerings.get(number - 1), number);
				notes.putIfAbsent(name, note(name, fingerings.get(number - 1), closed));
			}
		});
		return List.copyOf(notes.values());
	}

	/** As {@link SystemNotes} names it. */
	private static String name(String note, Fingering fingering, int number) {
		return number == 1 ? note
				: note + "/" + Optional.ofNullable(fingering.getLabel()).orElse(String.valueOf(number));
	}

	private SheetNote note(String name, Fingering fingering, Map<String, Set<String>> closed) {
		Set<String> touches = fingering.getPresses().stream().flatMap(press -> Present.of(press.getTouch()).stream())
				.map(Touch::getName).collect(Collectors.toSet());
		return new SheetNote(name, touches, List.of(), Optional.ofNullable(closed.get(name)));
	}
}
