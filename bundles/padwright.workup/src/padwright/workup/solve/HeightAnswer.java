package padwright.workup.solve;

import padwright.engine.height.HeightSolution;

/**
 * The full shims that bring a pad to height.
 *
 * @param work what they have to sum to, and why
 * @param solution the best from the film that is left
 */
public record HeightAnswer(HeightWork work, HeightSolution solution) {

	/** Whether the best film there is comes within the seat tolerance; if not, it is no answer to work from. */
	public boolean reachesHeight() {
		return !work.isOff(solution.pieces());
	}
}
