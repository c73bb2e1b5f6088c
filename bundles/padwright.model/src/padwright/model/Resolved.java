package padwright.model;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

/** References that may be missing, or be broken links. */
public final class Resolved {

	private Resolved() {
	}

	/** {@code target}, unless it is null or an unresolved link. */
	public static <T extends EObject> Optional<T> of(T target) {
		return target == null || target.eIsProxy() ? Optional.empty() : Optional.of(target);
	}
}
