package padwright.language.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import padwright.engine.length.LengthUnit;
import padwright.language.messages.Messages;
import padwright.model.Lengths;
import padwright.model.Measure;
import padwright.model.keysystem.Change;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveSystem;

/**
 * Something that a system inherits, as a form shows it there: what the nearest of all changes says, down to the rim of a
 * hole, else what is inherited. What is edited is said by a change in the heir, never in what it is based on.
 */
public final class InheritedElement {

	private final KeySystem heir;
	private final Titled thing;
	private final SystemEdits edits;
	private final List<EObject> nearestFirst = new ArrayList<>();

	public InheritedElement(KeySystem heir, Titled thing) {
		this.heir = heir;
		this.thing = thing;
		edits = new SystemEdits(heir);
		for (KeySystem system : EffectiveSystem.lineage(heir)) {
			new SystemEdits(system).written(thing).ifPresent(statement -> nearestFirst.add(0, statement));
		}
	}

	/** What a change is of, where that is inherited. */
	public static Optional<InheritedElement> changedBy(Change change) {
		return change.eClass().getEAllReferences().stream().filter(reference -> !reference.isContainment())
				.filter(reference -> reference.getEContainingClass() == change.eClass()).map(change::eGet)
				.filter(Titled.class::isInstance).map(Titled.class::cast).filter(named -> named.eResource() != null).findFirst()
				.map(named -> new InheritedElement((KeySystem) change.eContainer(), named));
	}

	public Titled thing() {
		return thing;
	}

	public KeySystem heir() {
		return heir;
	}

	/** The heir's own change, if there is one. */
	public Optional<EObject> change() {
		return edits.written(thing);
	}

	/** All fields, each from the nearest statement that says it. */
	public List<ElementField> fields() {
		Map<String, ElementField> fields = new LinkedHashMap<>();
		for (int place = nearestFirst.size() - 1; place >= 0; place--) {
			EObject statement = nearestFirst.get(place);
			for (ElementField field : ElementFields.of(statement)) {
				put(fields, statement, field);
			}
		}
		return List.copyOf(fields.values());
	}

	private void put(Map<String, ElementField> fields, EObject statement, ElementField field) {
		String clause = ElementFields.clause(statement, field);
		boolean isUnsaidPart = field.element() == statement && field.feature().getName().equals(clause)
				&& fields.keySet().stream().anyMatch(there -> there.startsWith(clause + "/"));
		boolean isSaid = !field.text().isEmpty() || Nothing.isSaid(statement, clause);
		boolean isShown = isSaid || statement.eContainer() == heir && !(fields.containsKey(key(statement, field))
				|| isUnsaidPart || Nothing.isWord(field.feature()));
		if (statement == thing || isShown) {
			String key = key(statement, field);
			if (!key.equals(clause)) {
				fields.remove(clause);
			}
			fields.put(key, field.seenFrom(heir));
		}
	}

	/** The clause, and what of its part it is where it has one. */
	private static String key(EObject statement, ElementField field) {
		String clause = ElementFields.clause(statement, field);
		return field.element() == statement && field.feature().getName().equals(clause) ? clause
				: clause + "/" + field.feature().getName();
	}

	/** What can be said of a part in a list. */
	public List<ElementField> fields(ListRows rows, int row) {
		return rows.fields(row).stream().map(field -> field.seenFrom(heir)).toList();
	}

	/** What is wrong with a value; nothing if a change can say it. */
	public Optional<String> fault(ElementField field, String value) {
		boolean isTakenBack = !value.isBlank() || isOwn(field.element()) || isInList(field)
				|| Nothing.canBe(thing, field.feature());
		return isTakenBack ? field.fault(value) : Optional.of(Messages.of("field.inherited"));
	}

	/** Writes a value into the heir's change, which is begun if there is none and taken away with its last clause. */
	public List<TextEdit> edit(ElementField field, String value) {
		EObject statement = statement(field.element());
		String clause = ElementFields.clause(statement, field);
		if (isOwn(statement) || isInList(field)) {
			return edit(statement, clause, field.edit(value));
		}
		if (value.isBlank()) {
			return edits.put(thing, Map.of(clause, Nothing.of(thing, clause)));
		}
		ElementField nearest = nearest(key(statement, field));
		return edit(statement(nearest.element()), clause, nearest.edit(measured(field, value, nearest)));
	}

	/** A field of the nearest statement that has it: a change may not say it yet, but can. */
	private ElementField nearest(String key) {
		return nearestFirst.stream().flatMap(statement -> ElementFields.of(statement).stream()
				.filter(each -> key(statement, each).equals(key))).findFirst().orElseThrow().seenFrom(heir);
	}

	/** A figure without a unit has that of the document where it was found. */
	private static String measured(ElementField found, String value, ElementField target) {
		LengthUnit unit = Lengths.documentUnit(found.element());
		boolean isBare = found.feature().getEType().getInstanceClass() == Measure.class
				&& value.chars().noneMatch(Character::isLetter);
		return isBare && unit != Lengths.documentUnit(target.element()) ? value.strip() + " " + unit.symbol() : value;
	}

	/** Writes a list with other rows into the heir's change. */
	public List<TextEdit> edit(ListRows rows, List<TextEdit> changed) {
		EObject statement = statement(rows.element());
		String clause = statement == rows.element() ? rows.list().getName()
				: ElementFields.clause(statement, ElementFields.of(rows.element()).get(0));
		return edit(statement, clause, changed);
	}

	/** Whether the last row of a list can be taken out. */
	public boolean canBeEmpty(ListRows rows) {
		return isOwn(rows.element()) || Nothing.canBe(thing, rows.list()) || rows.element() != statement(rows.element());
	}

	/** Takes the heir's change away. */
	public List<TextEdit> asInherited() {
		return edits.asInherited(List.of(thing));
	}

	private List<TextEdit> edit(EObject statement, String clause, List<TextEdit> changed) {
		EditedStatement after = EditedStatement.of(statement, changed);
		if (isOwn(statement)) {
			return after.saysNothing() ? asInherited() : changed;
		}
		boolean isOfOneUnit = Lengths.documentUnit(statement) == Lengths.documentUnit(heir);
		String said = (isOfOneUnit ? after : after.in(Lengths.documentUnit(statement))).clause(clause);
		return edits.put(thing, Map.of(clause, said.isEmpty() ? Nothing.of(thing, clause) : said));
	}

	private boolean isOwn(EObject element) {
		return EcoreUtil.isAncestor(heir, element);
	}

	private boolean isInList(ElementField field) {
		EObject statement = statement(field.element());
		for (EObject at = field.element(); at != statement; at = at.eContainer()) {
			if (at.eContainingFeature().isMany()) {
				return true;
			}
		}
		return false;
	}

	private static EObject statement(EObject element) {
		EObject at = element;
		while (!(at.eContainer() instanceof KeySystem)) {
			at = at.eContainer();
		}
		return at;
	}

	/** What a change says as {@code closes nothing}. */
	private static final class Nothing {

		private static final String WORD = "nothing";
		private static final Map<String, String> FLAGS = Map.of("touches", "untouched", "closes", "closesNothing", "opens",
				"opensNothing", "holds", "holdsNothing");

		private Nothing() {
		}

		static boolean canBe(Titled thing, EStructuralFeature list) {
			return FLAGS.containsKey(list.getName()) && thing.eClass().getEAllStructuralFeatures().contains(list);
		}

		static boolean isWord(EStructuralFeature feature) {
			return FLAGS.containsValue(feature.getName());
		}

		static boolean isSaid(EObject statement, String clause) {
			EStructuralFeature flag = FLAGS.containsKey(clause)
					? statement.eClass().getEStructuralFeature(FLAGS.get(clause)) : null;
			return flag != null && statement.eIsSet(flag);
		}

		static String of(Titled thing, String clause) {
			return WrittenClause.of(thing, clause).orElseThrow().word() + " " + WORD;
		}
	}
}
