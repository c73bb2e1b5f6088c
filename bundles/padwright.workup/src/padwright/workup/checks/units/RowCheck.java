package padwright.workup.checks.units;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.ThicknessRow;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.Place;

/** The numbers of a row are lengths that the thing can have. */
public final class RowCheck extends Check<ThicknessRow> {

	public RowCheck() {
		super(ThicknessRow.class);
	}

	@Override
	protected void check(ThicknessRow row, Findings findings) {
		Optional<Plausible> plausible = PlausibleLengths.ofRow(row);
		LengthUnit unit = Lengths.unit(row.getUnit(), row);
		List<BigDecimal> values = row.getValues();
		for (int index = 0; index < values.size(); index++) {
			Place place = new Place(row, PlanPackage.Literals.THICKNESS_ROW__VALUES, index);
			MeasureCheck.judge(values.get(index), unit, plausible, place, findings);
		}
	}
}
