package padwright.workup.checks;

/**
 * One rule that a model is judged by. A check looks at one kind of thing (an element of a model, or a
 * {@link padwright.workup.service.ServicePlan} or {@link padwright.workup.service.KeyJob}), holds no state, and is
 * found by its entry in {@code META-INF/services/padwright.workup.checks.Check}. It must cope with what a half-typed file gives it: missing
 * values and broken links.
 *
 * @param <T> the kind of thing
 */
public abstract class Check<T> {

	private final Class<T> subject;

	protected Check(Class<T> subject) {
		this.subject = subject;
	}

	final boolean isFor(Class<?> kind) {
		return subject.isAssignableFrom(kind);
	}

	final void checkSubject(Object thing, Findings findings) {
		check(subject.cast(thing), findings);
	}

	/** Adds what is wanting in {@code thing}. */
	protected abstract void check(T thing, Findings findings);
}
