package padwright.workup.choose;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.model.stock.Pad;

/**
 * One kind of pad for the whole set.
 *
 * @param fitting the labels of the keys that it can go into, in the plan's order
 * @param lacking those that it cannot, each with why
 * @param weight of all reasons at all keys: only good for an order
 * @param reasons the labels of the keys at which each holds, the heaviest reason first
 */
public record SetChoice(Pad pad, List<String> fitting, Map<String, String> lacking, BigDecimal weight,
		Map<Reason, List<String>> reasons) {

	public SetChoice {
		fitting = List.copyOf(fitting);
		lacking = new LinkedHashMap<>(lacking);
		reasons = new LinkedHashMap<>(reasons);
	}
}
