package padwright.workup.diagnosis;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.clock.ClockHour;
import padwright.engine.diagnosis.PadWeights;
import padwright.engine.leak.Air;
import padwright.engine.leak.SeatedPad;
import padwright.engine.leak.Tester;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;
import padwright.workup.leak.FeltPads;
import padwright.workup.service.ServicePlan;

/**
 * How much each pad is to be suspected before any note is played: by the leak that its readings predict, and on top of
 * it the leak of an even gap of half the finest leaf, which no reading can tell from none and which keeps every pad
 * under suspicion. A pad without readings weighs as much as the others on average. The tester is of no account for an
 * order, only ratios count.
 */
final class LeakWeights {

	private static final Tester TESTER = new Tester(1000, Air.at(20));

	private LeakWeights() {
	}

	/** Even weights where no pad was felt. */
	static PadWeights of(ServicePlan plan) {
		List<SeatedPad> felt = FeltPads.of(plan).pads();
		if (felt.isEmpty()) {
			return PadWeights.EVEN;
		}
		Length unseen = new Length(plan.feelers().get(0).nanometres() / 2);
		Map<String, Double> weights = new LinkedHashMap<>();
		felt.forEach(pad -> weights.put(pad.key(), weight(pad, unseen)));
		double average = weights.values().stream().mapToDouble(Double::doubleValue).average().getAsDouble();
		plan.system().keys().forEach(key -> weights.putIfAbsent(key.name(), average));
		return new PadWeights(weights);
	}

	private static double weight(SeatedPad pad, Length unseen) {
		long[] even = new long[ClockHour.STATIONS];
		Arrays.fill(even, unseen.nanometres());
		SeatedPad open = new SeatedPad(pad.key(), pad.rimRadius(), pad.rimWidth(), RimProfile.ofNanometres(even));
		return pad.millilitresPerMinute(TESTER) + open.millilitresPerMinute(TESTER);
	}
}
