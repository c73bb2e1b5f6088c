package padwright.workup.inspection;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

import padwright.model.plan.PlanPackage;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/**
 * Springs that differ from the others of the instrument. No weight is right by itself: what is felt is the difference
 * (common practice, no source), here from the middle one of all that were weighed.
 */
final class SpringWork {

	/** Fewer springs tell nothing of the usual one. */
	private static final int LEAST_SPRINGS = 3;
	/** A spring beyond half more or a third less than the middle one is told (an assumption of ours, no source). */
	private static final BigDecimal HEAVY = new BigDecimal("1.5");

	private SpringWork() {
	}

	static List<Recommendation> of(ServicePlan plan) {
		List<BigDecimal> weights = plan.jobs().stream().map(job -> job.service().getSpring()).filter(Objects::nonNull)
				.sorted().toList();
		if (weights.size() < LEAST_SPRINGS) {
			return List.of();
		}
		BigDecimal middle = weights.get(weights.size() / 2);
		return plan.jobs().stream().filter(job -> job.service().getSpring() != null)
				.filter(job -> isFarFrom(middle, job.service().getSpring())).map(job -> bend(job, middle)).toList();
	}

	private static boolean isFarFrom(BigDecimal middle, BigDecimal weight) {
		return weight.compareTo(middle.multiply(HEAVY)) > 0 || middle.compareTo(weight.multiply(HEAVY)) > 0;
	}

	private static Recommendation bend(KeyJob job, BigDecimal middle) {
		BigDecimal weight = job.service().getSpring();
		boolean isHeavy = weight.compareTo(middle) > 0;
		return new Recommendation(job.service(), PlanPackage.Literals.KEY_SERVICE__SPRING,
				Phrase.plain(job.key().map(EffectiveKey::label).orElse(job.name())),
				Phrase.of("work.spring", weight.toPlainString(), middle.toPlainString()),
				isHeavy ? Phrase.of("work.heavy.work") : Phrase.of("work.light.work"),
				isHeavy ? Phrase.of("work.heavy.reason") : Phrase.of("work.light.reason"));
	}
}
