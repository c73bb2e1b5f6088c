package padwright.model;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the feelers said at one hour, key lightly closed.
 *
 * @param free the thickest feeler that slides free, in the unit of its row; empty where the finest drags
 * @param lightly the finest drags, but lightly: only where readings are graded, and nothing slides
 */
public record FeelerReading(Optional<BigDecimal> free, boolean lightly) {

	/** The finest feeler drags; firmly, where readings are graded. */
	public static final FeelerReading DRAGS = new FeelerReading(Optional.empty(), false);

	/** The finest feeler drags lightly. */
	public static final FeelerReading DRAGS_LIGHTLY = new FeelerReading(Optional.empty(), true);

	private static final String DRAGS_TEXT = ".";
	private static final String DRAGS_LIGHTLY_TEXT = "-";

	/** The feeler of this thickness slides free. */
	public static FeelerReading free(BigDecimal thickness) {
		return new FeelerReading(Optional.of(thickness), false);
	}

	/** Written {@code .} or {@code -} or as a number; {@link NumberFormatException} for anything else. */
	public static FeelerReading valueOf(String text) {
		return switch (text) {
			case DRAGS_TEXT -> DRAGS;
			case DRAGS_LIGHTLY_TEXT -> DRAGS_LIGHTLY;
			default -> free(new BigDecimal(text));
		};
	}

	@Override
	public String toString() {
		return free.map(BigDecimal::toPlainString).orElse(lightly ? DRAGS_LIGHTLY_TEXT : DRAGS_TEXT);
	}
}
