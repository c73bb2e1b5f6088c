package padwright.workup.leak;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.engine.leak.InstrumentLeak;
import padwright.engine.leak.LeakComparison;
import padwright.engine.leak.SeatedPad;
import padwright.engine.leak.Tester;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.NewPieces;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.RestingGap;

/**
 * What the keys of a plan leak as they were felt, and what they will leak once their new pieces are placed. A key with
 * new pieces comes to rest on its highest spot; one that gets none, or could not be solved, stays as it was felt, since
 * nothing changes there.
 *
 * @param felt the pads before
 * @param comparison before and after
 */
public record PlanLeak(ServicePlan plan, FeltPads felt, LeakComparison comparison) {

	public static PlanLeak of(PlanSolution solution, Tester tester) {
		FeltPads felt = FeltPads.of(solution.plan());
		Map<String, KeySolution> solved = solution.keys().stream()
				.collect(Collectors.toMap(key -> key.job().name(), key -> key, (first, second) -> second));
		List<SeatedPad> after = felt.pads().stream().map(pad -> after(pad, solved.get(pad.key()))).toList();
		return new PlanLeak(solution.plan(), felt, new LeakComparison(InstrumentLeak.of(felt.pads(), tester),
				InstrumentLeak.of(after, tester)));
	}

	private static SeatedPad after(SeatedPad pad, KeySolution solution) {
		NewPieces pieces = NewPieces.of(solution);
		return solution.level().filter(answer -> !pieces.pieces().isEmpty())
				.map(answer -> levelled(pad, pieces, answer)).orElse(pad);
	}

	private static SeatedPad levelled(SeatedPad pad, NewPieces pieces, LevelAnswer answer) {
		return new SeatedPad(pad.key(), pad.rimRadius(), pad.rimWidth(), RestingGap.of(
				pieces.residual(answer.rim().profile(), answer.problem().stiffness())));
	}
}
