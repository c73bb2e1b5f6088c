package padwright.workup;

import java.util.Optional;

import padwright.model.plan.Plan;

/** Whether a plan names all that a solver needs. */
public final class Readiness {

	private Readiness() {
	}

	/** What {@code plan} lacks before it can be solved, or empty if nothing. */
	public static Optional<String> lacking(Plan plan) {
		if (plan.getSystem() == null) {
			return Optional.of("key system");
		}
		return plan.getStock() == null ? Optional.of("stock list") : Optional.empty();
	}
}
