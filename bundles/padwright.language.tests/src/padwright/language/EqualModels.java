package padwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import padwright.model.keysystem.Titled;

/** Compares models by all that they contain, and references out of them by the name of what they refer to. */
public final class EqualModels extends EcoreUtil.EqualityHelper {

	private static final long serialVersionUID = 1;

	private EqualModels() {
	}

	public static void assertEqualModels(EObject expected, EObject actual) {
		assertEquals(inWords(expected, ""), inWords(actual, ""));
		assertTrue(new EqualModels().equals(expected, actual));
	}

	@Override
	protected boolean haveEqualReference(EObject expected, EObject actual, EReference reference) {
		return reference.isContainment() ? super.haveEqualReference(expected, actual, reference)
				: names(expected.eGet(reference)).equals(names(actual.eGet(reference)));
	}

	private static String inWords(EObject element, String indent) {
		StringBuilder words = new StringBuilder(element.eClass().getName()).append('\n');
		for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
			if (element.eIsSet(feature)) {
				words.append(indent).append(feature.getName()).append(" = ")
						.append(inWords(element.eGet(feature), feature, indent + "\t")).append('\n');
			}
		}
		return words.toString();
	}

	private static String inWords(Object value, EStructuralFeature feature, String indent) {
		if (!(feature instanceof EReference reference)) {
			return value.toString();
		}
		return !reference.isContainment() ? names(value)
				: all(value).stream().map(part -> inWords(part, indent)).collect(Collectors.joining(indent));
	}

	private static String names(Object value) {
		return all(value).stream().map(EqualModels::name).collect(Collectors.joining(", "));
	}

	private static List<EObject> all(Object value) {
		return value == null ? List.of()
				: value instanceof List<?> list ? list.stream().map(EObject.class::cast).toList()
						: List.of((EObject) value);
	}

	private static String name(EObject target) {
		if (target.eIsProxy()) {
			return "unresolved " + EcoreUtil.getURI(target);
		}
		String outer = target.eContainer() instanceof Titled container ? name(container) + "." : "";
		return outer + target.eClass().getName() + " " + ((Titled) target).getName();
	}
}
