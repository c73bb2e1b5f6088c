package padwright.benchmarks;

import java.time.Duration;

import padwright.engine.levelling.LevellingProblem;

/** A general-purpose optimiser given the levelling problem in the best form we know for it. One thread only. */
public interface GeneralSolver {

	/**
	 * What it came to.
	 *
	 * @param spread the least found, in nm
	 * @param bound no choice has a smaller one, in nm
	 * @param proved whether both are the same
	 */
	record Answer(long spread, long bound, boolean proved) {
	}

	String name();

	/** The least spread with at most the problem's number of pieces; less than we ask of the levelling itself. */
	Answer leastSpread(LevellingProblem problem, Duration limit);
}
