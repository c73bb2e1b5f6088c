package padwright.workup.solve;

import java.util.List;
import java.util.stream.Stream;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.seating.SeatAnswer;
import padwright.engine.seating.SeatProblem;

/**
 * What brings a pad to its seat.
 *
 * @param pad what was known of it before it was felt
 * @param problem as it was solved, with the film that was left
 * @param seat what to do, and how sure it is to help
 * @param swap how the full shims are changed; nothing out and in where they are not
 */
public record LevelAnswer(PadBelief pad, SeatProblem problem, SeatAnswer seat, FullShims.Swap swap) {

	/** The film that it takes. */
	public List<Length> films() {
		return Stream.concat(seat.place().stream().map(PartialShim::thickness), swap.in().stream()).toList();
	}
}
