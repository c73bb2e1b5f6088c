package padwright.workup.solve;

import java.util.List;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.levelling.LevellingProblem;
import padwright.engine.levelling.LevellingSolution;
import padwright.engine.rim.RimEstimate;

/**
 * The partial shims that level a pad.
 *
 * @param rim the gap around the rim that the readings tell of
 * @param problem as it was solved, with the film that was left
 * @param assumedStiffness whether the stock gave no stiffness for the pad
 */
public record LevelAnswer(RimEstimate rim, LevellingProblem problem, LevellingSolution solution,
		boolean assumedStiffness) {

	/** The film that each piece takes. */
	public List<Length> films() {
		return solution.pieces().stream().map(PartialShim::thickness).toList();
	}
}
