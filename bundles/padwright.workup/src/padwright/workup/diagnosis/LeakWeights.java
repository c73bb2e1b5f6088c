package padwright.workup.diagnosis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.diagnosis.PadWeights;
import padwright.engine.leak.Air;
import padwright.engine.leak.InstrumentLeak;
import padwright.engine.leak.Tester;
import padwright.workup.leak.PadAsFelt;
import padwright.workup.leak.PadsAsFelt;
import padwright.workup.service.ServicePlan;

/**
 * How much each pad is to be suspected before any note is played: by the leak that is to be expected after its rounds, which
 * keeps every pad under suspicion, since a dot never tells that nothing is open. A pad without readings weighs as much as
 * the others on average. The tester is of no account for an order, only ratios count.
 */
final class LeakWeights {

	private static final Tester TESTER = new Tester(1000, Air.at(20));

	private LeakWeights() {
	}

	/** Even weights where no pad was felt. */
	static PadWeights of(ServicePlan plan) {
		List<PadAsFelt> felt = PadsAsFelt.of(plan).pads();
		if (felt.isEmpty()) {
			return PadWeights.EVEN;
		}
		Map<String, Double> weights = new LinkedHashMap<>();
		InstrumentLeak.of(felt.stream().map(PadAsFelt::asFelt).toList(), TESTER).ranked()
				.forEach(leak -> weights.put(leak.key(), leak.flow().expected()));
		double average = weights.values().stream().mapToDouble(Double::doubleValue).average().getAsDouble();
		plan.system().keys().forEach(key -> weights.putIfAbsent(key.name(), average));
		return new PadWeights(weights);
	}
}
