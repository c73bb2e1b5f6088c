package padwright.engine.drift;

import java.math.BigDecimal;

/**
 * What is known of a material constant: it lies between two numbers.
 *
 * @param low the least it may be; may be negative
 * @param high the most it may be, not below {@code low}
 */
public record MaterialRange(BigDecimal low, BigDecimal high) {

	/** @throws IllegalArgumentException if {@code low} is above {@code high} */
	public MaterialRange {
		if (low.compareTo(high) > 0) {
			throw new IllegalArgumentException("a range cannot run from " + low + " down to " + high);
		}
	}

	/** The range between two decimal numbers, as in {@code of("104", "106.5")}. */
	public static MaterialRange of(String low, String high) {
		return new MaterialRange(new BigDecimal(low), new BigDecimal(high));
	}

	/** A constant taken as exact. */
	public static MaterialRange exactly(String value) {
		return of(value, value);
	}

	MaterialRange plus(MaterialRange other) {
		return new MaterialRange(low.add(other.low), high.add(other.high));
	}

	/** Exact; the ends change places under a negative factor. */
	MaterialRange times(BigDecimal factor) {
		BigDecimal first = low.multiply(factor);
		BigDecimal second = high.multiply(factor);
		return new MaterialRange(first.min(second), first.max(second));
	}

	/** The larger distance of its ends from zero. */
	BigDecimal magnitude() {
		return low.abs().max(high.abs());
	}
}
