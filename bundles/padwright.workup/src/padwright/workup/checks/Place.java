package padwright.workup.checks;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Where a finding is.
 *
 * @param element the element found wanting
 * @param feature its feature in question, or null for the whole element
 * @param index which of the feature's values, or -1 for all
 */
public record Place(EObject element, EStructuralFeature feature, int index) {

	public static final int WHOLE = -1;

	public static Place of(EObject element) {
		return new Place(element, null, WHOLE);
	}

	public static Place of(EObject element, EStructuralFeature feature) {
		return new Place(element, feature, WHOLE);
	}
}
