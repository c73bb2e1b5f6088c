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
					Advice.of(IssueCodes.PREFERENCE_WEIGHT, weight.toPlainString()));
		}
	}
}
