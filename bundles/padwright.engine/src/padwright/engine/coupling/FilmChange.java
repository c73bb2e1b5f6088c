package padwright.engine.coupling;

import java.util.List;

import padwright.engine.length.Length;

/**
 * Film to add to a bumper or to take away from it.
 *
 * @param travel how far the face of the bumper shall move: positive to add, negative to take away
 * @param pieces the films, thickest first; empty where none brings it nearer
 */
public record FilmChange(Length travel, List<Length> pieces) implements Adjustment {

	public FilmChange {
		pieces = List.copyOf(pieces);
	}

	/** How far the pieces move the face, signed as the travel. */
	public Length moved() {
		Length sum = pieces.stream().reduce(Length.ZERO, Length::plus);
		return travel.signum() < 0 ? sum.negated() : sum;
	}

	/** What the film leaves undone, travel − moved. */
	public Length remainder() {
		return travel.minus(moved());
	}
}
