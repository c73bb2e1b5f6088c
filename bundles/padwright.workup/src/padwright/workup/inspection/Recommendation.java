package padwright.workup.inspection;

import padwright.workup.words.Phrase;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Work that a finding asks for. None of it takes metal off the instrument.
 *
 * @param element of the plan that notes the finding
 * @param feature of the element
 * @param where label of the key, or what of the instrument it is about
 * @param found what was found, without a full stop
 * @param work what to do about it, likewise
 * @param reason why, likewise
 */
public record Recommendation(EObject element, EStructuralFeature feature, Phrase where, Phrase found, Phrase work,
		Phrase reason) {

	/** As in {@code G♯: rim nicked at 3. Leave the rim as it is …: filing … .} */
	public String inOneLine() {
		return where + ": " + found + ". " + work + ": " + reason + ".";
	}
}
