package padwright.engine.coupling;

import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

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

	@Override
	public String inWords() {
		if (pieces.isEmpty()) {
			return travel.signum() == 0 ? "leave as it is" : "no film comes nearer";
		}
		String films = pieces.stream().map(piece -> piece.in(LengthUnit.THOU, 4).toPlainString())
				.collect(Collectors.joining(" + "));
		return (travel.signum() < 0 ? "take away " : "add ") + films + " thou of film";
	}
}
