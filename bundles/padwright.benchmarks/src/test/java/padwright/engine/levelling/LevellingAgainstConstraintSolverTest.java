package padwright.engine.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.benchmarks.ConstraintSolver;
import padwright.benchmarks.Pads;
import padwright.engine.length.Length;

/**
 * Three and four pieces against OR-Tools CP-SAT: our spread is reached by the pieces we give, in exact sums, and the
 * constraint solver proves that no choice reaches a nanometre less. One or two films, because with more the constraint
 * solver takes minutes for a pad.
 */
class LevellingAgainstConstraintSolverTest {

	private static final Duration LIMIT = Duration.ofSeconds(30);

	private final ConstraintSolver outside = new ConstraintSolver();

	@Test
	void threePieces() {
		assertTrue(proved(new Pads(31), new int[] {1}, 3, 190) >= 180);
	}

	@Test
	void threePiecesOfTwoFilms() {
		assertTrue(proved(new Pads(32), new int[] {1, 2}, 3, 12) >= 4);
	}

	@Test
	void fourPieces() {
		assertTrue(proved(new Pads(33), new int[] {1}, 4, 130) >= 115);
	}

	/** How many of the pads the outside solver came to an end with; it must never contradict. */
	private int proved(Pads pads, int[] films, int pieces, int count) {
		int proved = 0;
		for (int i = 0; i < count; i++) {
			LevellingProblem pad = pads.next(films, Length.ZERO, pieces);
			LevellingSolution solution = Levelling.solve(pad);
			assertEquals(solution.residual().spread(), solution.spreadAfter());
			long less = solution.spreadAfter().nanometres() - 1;
			Optional<Boolean> reached = outside.canReach(pad, less, LIMIT);
			assertNotEquals(Optional.of(true), reached, () -> solution + " is not the best of " + pad);
			proved += reached.isPresent() ? 1 : 0;
		}
		return proved;
	}
}
