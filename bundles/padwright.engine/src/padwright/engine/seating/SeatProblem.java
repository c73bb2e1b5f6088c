package padwright.engine.seating;

import java.util.List;

import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.FilmInPlace;
import padwright.engine.evidence.PadModel;
import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

/**
 * A pad to be brought to its seat.
 *
 * @param pad what is known of it before it is felt
 * @param rounds all since it was fitted, the newest last, at least one
 * @param now the film that is in place now
 * @param films what may be cut, each thickness listed once
 * @param fullShimSteps by how much the full shims can be changed with what is in stock, signed, not zero
 * @param seat the widest gap that counts as seated, more than zero
 * @param prices of changes
 */
public record SeatProblem(PadModel pad, List<FeltRound> rounds, FilmInPlace now, List<FilmSupply> films,
		List<Length> fullShimSteps, Length seat, Prices prices) {

	/** The most pieces that are ever in place behind one pad. */
	public static final int MOST_PIECES = 4;

	/** @throws IllegalArgumentException if there is no round, a step is zero or the seat not above zero */
	public SeatProblem {
		rounds = List.copyOf(rounds);
		films = List.copyOf(films);
		fullShimSteps = List.copyOf(fullShimSteps);
		if (rounds.isEmpty() || seat.signum() <= 0 || fullShimSteps.contains(Length.ZERO)) {
			throw new IllegalArgumentException("no round, no seat or a step of nothing");
		}
	}
}
