package padwright.workup.checks.stock;

import java.math.BigDecimal;

import padwright.model.stock.Preference;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A reason counts something, and no single one drowns all others. */
public final class PreferenceWeightCheck extends Check<Preference> {

	private static final BigDecimal MOST = BigDecimal.TEN;

	public PreferenceWeightCheck() {
		super(Preference.class);
	}

	@Override
	protected void check(Preference preference, Findings findings) {
		BigDecimal weight = preference.getWeight();
		if (weight != null && (weight.signum() == 0 || weight.compareTo(MOST) > 0)) {
			findings.error(IssueCodes.PREFERENCE_WEIGHT, Place.of(preference, StockPackage.Literals.PREFERENCE__WEIGHT),
					new Advice("A weight of " + weight.toPlainString() + " is not above 0 and at most 10",
							"reasons are weighed against each other", "Use 1 for a small reason, 3 for a good one, 5 for one "
									+ "that should decide; write a rule for what must not be"));
		}
	}
}
