package padwright.drawing.dxf;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Groups of a DXF file: a code on a line of its own, then its value.
 */
final class DxfText {

	/** Nanometres. */
	private static final int DECIMALS = 6;

	private final StringBuilder text = new StringBuilder();

	DxfText group(int code, String value) {
		text.append(code).append('\n').append(value).append('\n');
		return this;
	}

	DxfText group(int code, int value) {
		return group(code, String.valueOf(value));
	}

	/** A length in mm or an angle in degrees: always with a point, never an exponent. */
	DxfText group(int code, double value) {
		BigDecimal exact = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return group(code, (exact.scale() < 1 ? exact.setScale(1) : exact).toPlainString());
	}

	/** A point in the plane of the drawing: its codes are {@code code}, ten and twenty more. */
	DxfText point(int code, double x, double y) {
		return group(code, x).group(code + 10, y).group(code + 20, 0.0);
	}

	/** A string; what is not ASCII as {@code \U+XXXX}, which readers of all versions know. */
	DxfText string(int code, String value) {
		StringBuilder plain = new StringBuilder();
		for (char letter : value.toCharArray()) {
			if (letter >= ' ' && letter <= '~') {
				plain.append(letter);
			} else {
				plain.append(String.format("\\U+%04X", (int) letter));
			}
		}
		return group(code, plain.toString());
	}

	@Override
	public String toString() {
		return text.toString();
	}
}
