package padwright.workbench.inspector;

import org.eclipse.emf.ecore.EObject;

import padwright.language.edit.ElementField;
import padwright.model.Lengths;
import padwright.model.Measure;
import padwright.workbench.Messages;

/** What fields are called at the bench, and the units of their values. */
final class FieldWords {

	private static final String FIELD = "field.";
	private static final String KIND = "kind.";
	private static final String UNIT = "fieldUnit.";

	private FieldWords() {
	}

	/** As in "Cup: depth". */
	static String name(ElementField field) {
		String attribute = attribute(field);
		return Messages.find("part." + field.element().eContainingFeature().getName())
				.map(part -> Messages.get("inspector.part", part, attribute)).orElse(attribute);
	}

	/** As in "Depth"; a word of its own where the same feature is something else elsewhere. */
	static String attribute(ElementField field) {
		String ofItsClass = FIELD + field.feature().getEContainingClass().getName() + "." + field.feature().getName();
		return Messages.find(ofItsClass).or(() -> Messages.find(FIELD + field.feature().getName()))
				.or(() -> Messages.find("part." + field.feature().getName())).orElse(field.feature().getName());
	}

	/** What a field is of, as in "Empty cup". */
	static String part(ElementField field) {
		String part = field.element().eContainingFeature().getName();
		return Messages.find("part." + part).orElse(part);
	}

	/** As in "Pad". */
	static String kind(EObject element) {
		return Messages.find(KIND + element.eClass().getName()).orElse(element.eClass().getName());
	}

	/** The unit of what is typed; nothing where it holds its own, or has none. */
	static String unit(ElementField field) {
		if (field.feature().getEType().getInstanceClass() != Measure.class) {
			return Messages.find(UNIT + field.feature().getName()).orElse("");
		}
		boolean saysUnit = field.text().chars().anyMatch(Character::isLetter);
		return saysUnit ? "" : Lengths.documentUnit(field.element()).symbol();
	}
}
