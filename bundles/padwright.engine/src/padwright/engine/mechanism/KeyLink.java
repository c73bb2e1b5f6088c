package padwright.engine.mechanism;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

import padwright.engine.length.Length;

/**
 * A key that acts on another while it is away from its rest.
 *
 * @param driver the key that acts
 * @param driven the key that it acts on
 * @param effect what it does to it
 * @param when on which other key it depends whether it acts; none if it always does
 * @param ratio travel at the pad of the driven key over travel at the pad of the driver, more than 0
 * @param play how far the pad of the driver travels before the driven key follows, 0 or more
 */
public record KeyLink(String driver, String driven, Effect effect, Optional<Condition> when, BigDecimal ratio,
		Length play) {

	/** @throws IllegalArgumentException if a key acts on itself, the ratio is not positive or the play is negative */
	public KeyLink {
		if (driver.equals(driven)) {
			throw new IllegalArgumentException("key " + driver + " cannot act on itself");
		}
		if (ratio.signum() <= 0 || play.signum() < 0) {
			throw new IllegalArgumentException("between " + driver + " and " + driven
					+ " the ratio must be above zero and the play not below: " + ratio + ", " + play);
		}
	}

	/** A link without condition, ratio 1 and no play. */
	public KeyLink(String driver, String driven, Effect effect) {
		this(driver, driven, effect, Optional.empty(), BigDecimal.ONE, Length.ZERO);
	}

	public static KeyLink closes(String driver, String driven) {
		return new KeyLink(driver, driven, Effect.CLOSES);
	}

	public static KeyLink opens(String driver, String driven) {
		return new KeyLink(driver, driven, Effect.OPENS);
	}

	public static KeyLink holds(String driver, String driven) {
		return new KeyLink(driver, driven, Effect.HOLDS);
	}

	/**
	 * On which other key a link depends.
	 *
	 * @param key the other key
	 * @param isMoved whether it must be away from its rest; else it must be at rest
	 */
	public record Condition(String key, boolean isMoved) {
	}

	/** The same link that acts only while another key is away from its rest. */
	public KeyLink when(String key) {
		return on(new Condition(key, true));
	}

	/** The same link that acts only while another key is at rest. */
	public KeyLink unless(String key) {
		return on(new Condition(key, false));
	}

	private KeyLink on(Condition condition) {
		return new KeyLink(driver, driven, effect, Optional.of(condition), ratio, play);
	}

	/** The same link with a ratio and play. */
	public KeyLink with(BigDecimal newRatio, Length newPlay) {
		return new KeyLink(driver, driven, effect, when, newRatio, newPlay);
	}

	/** As in {@code Oct opens Body when G} or {@code Oct opens Neck unless G}. */
	@Override
	public String toString() {
		return driver + " " + effect.name().toLowerCase(Locale.ROOT) + " " + driven
				+ when.map(on -> (on.isMoved() ? " when " : " unless ") + on.key()).orElse("");
	}
}
