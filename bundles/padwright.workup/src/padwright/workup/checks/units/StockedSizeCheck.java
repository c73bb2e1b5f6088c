package padwright.workup.checks.units;

import java.util.Optional;

import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.stock.Assortment;
import padwright.model.stock.StockPackage;
import padwright.model.stock.StockedSize;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.Place;

/** The sizes of an assortment are ones that the article can have. */
public final class StockedSizeCheck extends Check<Assortment> {

	public StockedSizeCheck() {
		super(Assortment.class);
	}

	@Override
	protected void check(Assortment assortment, Findings findings) {
		Optional<Plausible> plausible = PlausibleLengths.ofRow(assortment);
		LengthUnit unit = Lengths.unit(assortment.getUnit(), assortment);
		for (StockedSize size : assortment.getSizes()) {
			if (size.getSize() != null) {
				MeasureCheck.judge(size.getSize(), unit, plausible,
						Place.of(size, StockPackage.Literals.STOCKED_SIZE__SIZE), findings);
			}
		}
	}
}
