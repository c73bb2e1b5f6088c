package padwright.workup.checks.stock;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Set;

import padwright.model.stock.Assortment;
import padwright.model.stock.StockPackage;
import padwright.model.stock.StockedSize;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A size stands once in an assortment. */
public final class AssortmentCheck extends Check<Assortment> {

	public AssortmentCheck() {
		super(Assortment.class);
	}

	@Override
	protected void check(Assortment assortment, Findings findings) {
		Set<BigDecimal> seen = new HashSet<>();
		for (StockedSize size : assortment.getSizes()) {
			if (size.getSize() != null && !seen.add(size.getSize().stripTrailingZeros())) {
				findings.error(IssueCodes.DUPLICATE_SIZE, Place.of(size, StockPackage.Literals.STOCKED_SIZE__SIZE),
						Advice.of(IssueCodes.DUPLICATE_SIZE, size.getSize().toPlainString()));
			}
		}
	}
}
