package padwright.workup.checks.plans;

import java.math.BigDecimal;

import padwright.model.plan.KeyService;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A spring weighs what a finger can press without thinking; wide bounds of ours, no source. */
public final class SpringWeightCheck extends Check<KeyService> {

	private static final BigDecimal LEAST = BigDecimal.valueOf(5);
	private static final BigDecimal MOST = BigDecimal.valueOf(200);

	public SpringWeightCheck() {
		super(KeyService.class);
	}

	@Override
	protected void check(KeyService row, Findings findings) {
		BigDecimal grams = row.getSpring();
		if (grams != null && (grams.compareTo(LEAST) < 0 || grams.compareTo(MOST) > 0)) {
			findings.error(IssueCodes.SPRING_WEIGHT, Place.of(row, PlanPackage.Literals.KEY_SERVICE__SPRING),
					Advice.of(IssueCodes.SPRING_WEIGHT, grams.toPlainString(), LEAST, MOST));
		}
	}
}
