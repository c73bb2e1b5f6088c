package padwright.language.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import padwright.model.keysystem.Change;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Removal;
import padwright.model.keysystem.Rod;
import padwright.model.keysystem.Titled;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;

/**
 * Changes of a key system as edits of its text. What is inherited is changed by a {@code change} in this system, never in
 * the system that it comes from. The rest of the text stays as it is, remarks included.
 */
public final class SystemEdits {

	private final KeySystem system;
	private final SystemWords words;

	public SystemEdits(KeySystem system) {
		this.system = system;
		words = new SystemWords(system);
	}

	/** Adds a whole statement behind the others of its kind. */
	public List<TextEdit> add(Class<? extends EObject> kind, String statement) {
		return addAll(kind, List.of(statement));
	}

	/** Edits of the same text as one change: what is inserted at one place comes in this order. */
	public List<TextEdit> together(List<TextEdit> several) {
		return OneAfterAnother.of(several);
	}

	private List<TextEdit> addAll(Class<? extends EObject> kind, List<String> statements) {
		return statements.isEmpty() ? List.of() : List.of(new Statements(system).add(kind, statements));
	}

	/**
	 * Makes clauses those of something of the system; of what is inherited, in its {@code change}, which is begun if there
	 * is none.
	 *
	 * @param clauses by the feature that they say, in the order in which they are written
	 */
	public List<TextEdit> put(Titled thing, Map<String, String> clauses) {
		return putAll(Map.of(thing, clauses));
	}

	/** As {@link #put}, for several things at once. */
	public List<TextEdit> putAll(Map<? extends Titled, Map<String, String>> things) {
		List<TextEdit> edits = new ArrayList<>();
		List<String> changes = new ArrayList<>();
		things.forEach((thing, clauses) -> written(thing).ifPresentOrElse(
				statement -> clauses.forEach((feature, clause) -> edits
						.add(WrittenClause.of(statement, feature).orElseThrow().put(clause))),
				() -> changes.add("change " + reference(thing) + " " + String.join(" ", clauses.values()))));
		edits.addAll(addAll(Change.class, changes));
		return OneAfterAnother.of(edits);
	}

	/** The statement of this system about something: its own, or the last change of what is inherited. */
	public Optional<EObject> written(Titled thing) {
		return thing.eContainer() == system ? Optional.of(thing)
				: system.getChanges().stream().filter(change -> isAbout(change, thing)).<EObject>map(change -> change)
						.reduce((first, last) -> last);
	}

	private static boolean isAbout(Change change, Titled thing) {
		return change.eClass().getEReferences().stream()
				.anyMatch(reference -> !reference.isContainment() && change.eGet(reference) == thing);
	}

	/** Takes all changes of what is inherited back. */
	public List<TextEdit> asInherited(Collection<? extends Titled> things) {
		Statements lines = new Statements(system);
		return system.getChanges().stream().filter(change -> things.stream().anyMatch(thing -> isAbout(change, thing)))
				.map(lines::remove).toList();
	}

	/** Deletes what is the system's own, with all that the system says of it; says of what is inherited that it is missing. */
	public List<TextEdit> delete(Collection<? extends Titled> things) {
		List<TextEdit> edits = new ArrayList<>(Deletion.of(system, things));
		edits.addAll(addAll(Removal.class, things.stream().filter(thing -> thing.eContainer() != system)
				.map(thing -> "remove " + reference(thing)).toList()));
		return OneAfterAnother.of(edits);
	}

	/**
	 * Has a key move another.
	 *
	 * @param kind {@code closes}, {@code opens} or {@code holds} of a key
	 */
	public List<TextEdit> couple(Key driver, Key driven, EReference kind) {
		List<Coupling> inherited = EffectiveSystem.of(system).key(driver)
				.map(key -> couplings(key, kind)).orElse(List.of());
		return addTo(driver, kind, words.name(driven), inherited.stream().map(words::coupling).toList());
	}

	private static List<Coupling> couplings(EffectiveKey key, EReference kind) {
		return kind == KeySystemPackage.Literals.KEY_FEATURES__CLOSES ? key.closes()
				: kind == KeySystemPackage.Literals.KEY_FEATURES__OPENS ? key.opens() : key.holds();
	}

	/** Has a touch press a key. */
	public List<TextEdit> press(Touch touch, Key key) {
		List<Touch> inherited = EffectiveSystem.of(system).key(key).map(EffectiveKey::touches).orElse(List.of());
		return addTo(key, KeySystemPackage.Literals.KEY_FEATURES__TOUCHES, words.name(touch),
				inherited.stream().map(words::name).toList());
	}

	/** Has the finger of a touch cover a hole. */
	public List<TextEdit> cover(Touch touch, Hole hole) {
		List<Touch> inherited = EffectiveSystem.of(system).hole(hole).map(each -> each.touches()).orElse(List.of());
		return addTo(hole, KeySystemPackage.Literals.HOLE_FEATURES__TOUCHES, words.name(touch),
				inherited.stream().map(words::name).toList());
	}

	/** A list that a change says replaces the inherited one, so that its first entry brings those along. */
	private List<TextEdit> addTo(Titled thing, EStructuralFeature list, String value, List<String> inherited) {
		Optional<EObject> written = written(thing);
		if (written.filter(there -> !((List<?>) there.eGet(list)).isEmpty()).isPresent()
				|| written.isPresent() && inherited.isEmpty()) {
			return List.of(new ListClause(written.get(), list).add(value));
		}
		List<String> all = new ArrayList<>(inherited);
		all.add(value);
		String word = written.flatMap(there -> WrittenClause.of(there, list.getName())).map(WrittenClause::word)
				.orElseGet(() -> WrittenClause.of(thing, list.getName()).map(WrittenClause::word).orElseThrow());
		return put(thing, Map.of(list.getName(), word + " " + String.join(", ", all)));
	}

	/** As in {@code touch L1}; keys are named bare. */
	private String reference(Titled thing) {
		String kind = thing instanceof Key ? "" : thing instanceof Touch ? "touch " : thing instanceof Hole ? "hole "
				: thing instanceof Rod ? "rod " : thing instanceof Joint ? "joint " : "";
		return kind + words.name(thing);
	}
}
