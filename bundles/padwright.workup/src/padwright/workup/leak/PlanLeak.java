package padwright.workup.leak;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.engine.leak.InstrumentLeak;
import padwright.engine.leak.LeakComparison;
import padwright.engine.leak.LikelyPad;
import padwright.engine.leak.Tester;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.FilmInCup;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlanSolution;

/**
 * What the keys of a plan are expected to leak as they were felt, and once what the plan notes, or else the answer, is carried
 * out. A key where nothing is done stays as it was felt.
 *
 * @param felt the pads before
 * @param comparison before and after
 */
public record PlanLeak(ServicePlan plan, PadsAsFelt felt, LeakComparison comparison) {

	public static PlanLeak of(PlanSolution solution, Tester tester) {
		PadsAsFelt felt = PadsAsFelt.of(solution.plan());
		Map<String, KeySolution> solved = solution.keys().stream()
				.collect(Collectors.toMap(key -> key.job().name(), key -> key, (first, second) -> second));
		List<LikelyPad> before = felt.pads().stream().map(PadAsFelt::asFelt).toList();
		List<LikelyPad> after = felt.pads().stream()
				.map(pad -> pad.with(FilmInCup.after(solved.get(pad.job().name())).inPlace())).toList();
		return new PlanLeak(solution.plan(), felt,
				new LeakComparison(InstrumentLeak.of(before, tester), InstrumentLeak.of(after, tester)));
	}
}
