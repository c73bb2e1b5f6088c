package padwright.workup.checks;

import org.eclipse.emf.ecore.EObject;

/**
 * One rule that a model is judged by. A check looks at one kind of element, holds no state, and is found by its entry
 * in {@code META-INF/services/padwright.workup.checks.Check}. It must bear what a half-typed file gives it: missing
 * values and broken links.
 *
 * @param <T> the kind of element
 */
public abstract class Check<T extends EObject> {

	private final Class<T> subject;

	protected Check(Class<T> subject) {
		this.subject = subject;
	}

	final void checkIfSubject(EObject element, Findings findings) {
		if (subject.isInstance(element)) {
			check(subject.cast(element), findings);
		}
	}

	/** Adds what is wanting in {@code element}. */
	protected abstract void check(T element, Findings findings);
}
