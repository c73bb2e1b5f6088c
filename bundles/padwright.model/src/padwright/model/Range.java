package padwright.model;

import java.math.BigDecimal;

/**
 * All numbers from {@code low} to {@code high}, written {@code 13..16}, or {@code 13} where both are the same.
 */
public record Range(BigDecimal low, BigDecimal high) {

	private static final String BETWEEN = "..";

	/** @throws IllegalArgumentException if {@code text} is not a number or two with {@code ..} between them */
	public static Range valueOf(String text) {
		int between = text.indexOf(BETWEEN);
		if (between < 0) {
			return of(new BigDecimal(text.strip()));
		}
		return new Range(new BigDecimal(text.substring(0, between).strip()),
				new BigDecimal(text.substring(between + BETWEEN.length()).strip()));
	}

	/** The one number. */
	public static Range of(BigDecimal number) {
		return new Range(number, number);
	}

	/** Whether {@code low} is above {@code high}, so that nothing lies between. */
	public boolean isEmpty() {
		return low.compareTo(high) > 0;
	}

	@Override
	public String toString() {
		return low.equals(high) ? low.toPlainString() : low.toPlainString() + BETWEEN + high.toPlainString();
	}
}
