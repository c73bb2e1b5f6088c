package padwright.engine.height;

import java.util.Comparator;
import java.util.List;

import padwright.engine.length.Length;

/**
 * The full shims that come nearest to a height.
 *
 * @param pieces one entry per piece, thickest first; empty if no film is the nearest
 * @param sum what they add up to
 * @param error sum less target: positive over height, negative under
 */
public record HeightSolution(List<Length> pieces, Length sum, Length error) {

	/** @throws IllegalArgumentException if the pieces are not thickest first or do not add up to {@code sum} */
	public HeightSolution {
		pieces = List.copyOf(pieces);
		if (!pieces.equals(pieces.stream().sorted(Comparator.reverseOrder()).toList())) {
			throw new IllegalArgumentException("pieces " + pieces + " are not thickest first");
		}
		if (!sum.equals(pieces.stream().reduce(Length.ZERO, Length::plus))) {
			throw new IllegalArgumentException("pieces " + pieces + " do not add up to " + sum);
		}
	}

	static HeightSolution of(List<Length> pieces, Length target) {
		Length sum = pieces.stream().reduce(Length.ZERO, Length::plus);
		return new HeightSolution(pieces, sum, sum.minus(target));
	}
}
