package padwright.workup.checks.units;

import java.util.Optional;

import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.Place;

/** The readings of a round are thicknesses that a feeler can have. */
public final class FeelerReadingCheck extends Check<Round> {

	private static final Plausible FEELER = Plausible.thou("feelerReading", "0.1", "20");

	public FeelerReadingCheck() {
		super(Round.class);
	}

	@Override
	protected void check(Round round, Findings findings) {
		LengthUnit unit = Lengths.unit(round.getUnit(), round);
		for (int index = 0; index < round.getReadings().size(); index++) {
			Place place = new Place(round, PlanPackage.Literals.ROUND__READINGS, index);
			round.getReadings().get(index).free()
					.ifPresent(leaf -> MeasureCheck.judge(leaf, unit, Optional.of(FEELER), place, findings));
		}
	}
}
