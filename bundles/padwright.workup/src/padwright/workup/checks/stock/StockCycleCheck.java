package padwright.workup.checks.stock;

import java.util.List;

import padwright.model.Resolved;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.rules.ShopRules;

/** A stock must not take its rules from itself, directly or through others. */
public final class StockCycleCheck extends Check<Stock> {

	public StockCycleCheck() {
		super(Stock.class);
	}

	@Override
	protected void check(Stock stock, Findings findings) {
		List<Stock> shared = stock.getShared();
		for (int index = 0; index < shared.size(); index++) {
			boolean isCircle = Resolved.of(shared.get(index)).map(ShopRules::sources)
					.filter(sources -> sources.contains(stock)).isPresent();
			if (isCircle) {
				findings.error(IssueCodes.STOCK_CYCLE, new Place(stock, StockPackage.Literals.STOCK__SHARED, index),
						Advice.of(IssueCodes.STOCK_CYCLE, stock.getName()));
			}
		}
	}
}
