package padwright.paper.film;

import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;

/**
 * All that is cut from film of one kind and thickness.
 *
 * @param film what it is called, as in {@code polyester film}
 * @param onHand blanks that the stock counts; empty if it does not count them
 * @param fullShims by diameter
 * @param pieces in the order of the plan
 */
public record FilmGroup(String film, Length thickness, Optional<Integer> onHand, List<FullShims> fullShims,
		List<FilmPiece> pieces) {

	public FilmGroup {
		fullShims = List.copyOf(fullShims);
		pieces = List.copyOf(pieces);
	}

	/** How many full shims there are. */
	public int fullCount() {
		return fullShims.stream().mapToInt(FullShims::count).sum();
	}

	/** Blanks as the stock counts them: one for each full shim, and one for each piece. */
	public int blanks() {
		return fullCount() + pieces.size();
	}
}
