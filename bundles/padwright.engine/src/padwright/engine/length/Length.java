package padwright.engine.length;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An exact length in whole nanometres; may be negative (an error, a settling). Sums, differences and whole multiples
 * are exact; {@link ArithmeticException} where one would leave the range of 64 bits (about 9.2 million km).
 *
 * @param nanometres the length in nm
 */
public record Length(long nanometres) implements Comparable<Length> {

	public static final Length ZERO = new Length(0);

	/** {@code nanometres} nm. */
	public static Length ofNanometres(long nanometres) {
		return new Length(nanometres);
	}

	/** {@code thou} thousandths of an inch, as in {@code thou("7.5")}; see {@link #of(BigDecimal, LengthUnit)}. */
	public static Length thou(String thou) {
		return of(new BigDecimal(thou), LengthUnit.THOU);
	}

	/** {@code millimetres} mm, as in {@code millimetres("14.3")}; see {@link #of(BigDecimal, LengthUnit)}. */
	public static Length millimetres(String millimetres) {
		return of(new BigDecimal(millimetres), LengthUnit.MILLIMETRE);
	}

	/**
	 * The exact length of a decimal number of a unit.
	 *
	 * @throws ArithmeticException if it is not a whole number of nanometres, or out of range
	 */
	public static Length of(BigDecimal number, LengthUnit unit) {
		return new Length(number.multiply(BigDecimal.valueOf(unit.nanometres())).longValueExact());
	}

	public Length plus(Length other) {
		return new Length(Math.addExact(nanometres, other.nanometres));
	}

	public Length minus(Length other) {
		return new Length(Math.subtractExact(nanometres, other.nanometres));
	}

	public Length times(long factor) {
		return new Length(Math.multiplyExact(nanometres, factor));
	}

	public Length negated() {
		return new Length(Math.negateExact(nanometres));
	}

	public Length abs() {
		return nanometres < 0 ? negated() : this;
	}

	/** -1, 0 or 1. */
	public int signum() {
		return Long.signum(nanometres);
	}

	public boolean isLongerThan(Length other) {
		return nanometres > other.nanometres;
	}

	public boolean isShorterThan(Length other) {
		return nanometres < other.nanometres;
	}

	/** This length in {@code unit}, rounded half even to {@code decimals} places, trailing zeros removed. */
	public BigDecimal in(LengthUnit unit, int decimals) {
		BigDecimal rounded = BigDecimal.valueOf(nanometres)
				.divide(BigDecimal.valueOf(unit.nanometres()), decimals, RoundingMode.HALF_EVEN)
				.stripTrailingZeros();
		return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
	}

	/** This length in thou as a floating-point number, for models and drawings; never for a sum that is judged. */
	public double inThou() {
		return nanometres / (double) LengthUnit.THOU.nanometres();
	}

	@Override
	public int compareTo(Length other) {
		return Long.compare(nanometres, other.nanometres);
	}

	/** In thou to four decimals, as in {@code 7.5 thou}. */
	@Override
	public String toString() {
		return in(LengthUnit.THOU, 4).toPlainString() + " thou";
	}
}
