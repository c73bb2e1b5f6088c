package padwright.workup.rules;

import java.util.List;

import padwright.model.stock.PadKind;
import padwright.model.stock.Stock;

/** The constructions of pads that can be named in a stock: its own first, then those of the stocks that it is kept with. */
public final class PadKinds {

	private PadKinds() {
	}

	/** Empty for none. */
	public static List<PadKind> of(Stock stock) {
		return ShopRules.sources(stock).stream().flatMap(each -> each.getKinds().stream()).toList();
	}
}
