package padwright.model;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the feelers said at one hour, key lightly closed.
 *
 * @param free the thickest feeler that slides free, in the unit of its row; empty where the finest drags
 */
public record FeelerReading(Optional<BigDecimal> free) {

	/** The finest feeler drags. */
	public static final FeelerReading DRAGS = new FeelerReading(Optional.empty());

	private static final String DRAGS_TEXT = ".";

	/** Written {@code .} or as a number; {@link NumberFormatException} for anything else. */
	public static FeelerReading valueOf(String text) {
		return text.equals(DRAGS_TEXT) ? DRAGS : new FeelerReading(Optional.of(new BigDecimal(text)));
	}

	@Override
	public String toString() {
		return free.map(BigDecimal::toPlainString).orElse(DRAGS_TEXT);
	}
}
