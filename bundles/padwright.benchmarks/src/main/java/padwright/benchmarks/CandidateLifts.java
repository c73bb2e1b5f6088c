package padwright.benchmarks;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.levelling.LevellingProblem;
import padwright.engine.levelling.Lift;

/** The candidates of a problem, as a general solver is given them: film by film. */
final class CandidateLifts {

	private static final int HOURS = 12;

	private CandidateLifts() {
	}

	/** For each candidate of {@code film} its lift at the 24 stations, in nm. */
	static List<long[]> of(FilmSupply film, LevellingProblem problem) {
		List<long[]> lifts = new ArrayList<>();
		for (int start = 0; start < HOURS; start++) {
			for (int hours = 1; hours < HOURS; hours++) {
				Arc arc = new Arc(new ClockHour(2 * start), 2 * hours);
				PartialShim piece = new PartialShim(arc, film.thickness());
				lifts.add(Lift.of(piece, problem.stiffness()).toNanometres());
			}
		}
		return lifts;
	}

	/** How many pieces of a film a choice can hold. */
	static int most(FilmSupply film, LevellingProblem problem) {
		return Math.min(film.pieces(), problem.maxPieces());
	}
}
