package padwright.workup.solve;

import java.util.List;
import java.util.Optional;

import padwright.workup.service.KeyJob;
import padwright.workup.words.Phrase;

/**
 * The answer for one row of a plan.
 *
 * @param height the full shims, where they could be solved
 * @param level the partial shims, where they could be solved
 * @param unsolved why something could not be solved, and what to do about it; empty if all was
 */
public record KeySolution(KeyJob job, Optional<HeightAnswer> height, Optional<LevelAnswer> level,
		List<Phrase> unsolved) {

	public KeySolution {
		unsolved = List.copyOf(unsolved);
	}
}
