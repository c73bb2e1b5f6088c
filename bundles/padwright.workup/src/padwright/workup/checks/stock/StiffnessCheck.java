package padwright.workup.checks.stock;

import java.math.BigDecimal;

import padwright.model.stock.Pad;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A pad's stiffness is a number from 0 to 1. */
public final class StiffnessCheck extends Check<Pad> {

	public StiffnessCheck() {
		super(Pad.class);
	}

	@Override
	protected void check(Pad pad, Findings findings) {
		if (pad.getStiffness() != null && pad.getStiffness().compareTo(BigDecimal.ONE) > 0) {
			findings.error(IssueCodes.STIFFNESS_RANGE, Place.of(pad, StockPackage.Literals.PAD__STIFFNESS),
					Advice.of(IssueCodes.STIFFNESS_RANGE, pad.getStiffness().toPlainString()));
		}
	}
}
