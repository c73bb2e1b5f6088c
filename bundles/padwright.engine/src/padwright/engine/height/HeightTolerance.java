package padwright.engine.height;

import java.math.BigInteger;
import java.util.List;

import padwright.engine.length.Length;

/**
 * How far a height may be off, plus or minus, given how far each of its parts may be.
 *
 * @param worstCase every part off at once in the same direction; exact
 * @param rootSumSquare parts off independently (root of the sum of squares), rounded up to the nanometre
 */
public record HeightTolerance(Length worstCase, Length rootSumSquare) {

	/** @throws IllegalArgumentException if one is negative, or the independent one exceeds the worst */
	public HeightTolerance {
		if (rootSumSquare.signum() < 0 || rootSumSquare.isLongerThan(worstCase)) {
			throw new IllegalArgumentException("a tolerance of " + rootSumSquare + " with independent parts is not"
					+ " between nothing and the worst case of " + worstCase);
		}
	}

	/**
	 * The tolerance of a sum or difference of parts.
	 *
	 * @param parts the plus-or-minus tolerance of each part, zero or more; a piece used twice counts twice; none: exact
	 * @throws IllegalArgumentException if one is negative
	 */
	public static HeightTolerance ofParts(List<Length> parts) {
		Length sum = Length.ZERO;
		BigInteger squares = BigInteger.ZERO;
		for (Length part : parts) {
			if (part.signum() < 0) {
				throw new IllegalArgumentException("a tolerance of " + part + " is less than nothing");
			}
			sum = sum.plus(part);
			squares = squares.add(BigInteger.valueOf(part.nanometres()).pow(2));
		}
		return new HeightTolerance(sum, new Length(rootRoundedUp(squares)));
	}

	private static long rootRoundedUp(BigInteger square) {
		BigInteger[] rootAndRest = square.sqrtAndRemainder();
		return rootAndRest[0].longValueExact() + rootAndRest[1].signum();
	}
}
