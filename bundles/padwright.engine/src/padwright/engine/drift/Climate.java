package padwright.engine.drift;

import java.math.BigDecimal;

/**
 * The air an instrument lives in.
 *
 * @param celsius -50 to 80 °C
 * @param relativeHumidity 0 to 100 %RH
 */
public record Climate(BigDecimal celsius, BigDecimal relativeHumidity) {

	/** @throws IllegalArgumentException if either is out of range */
	public Climate {
		requireWithin("temperature", celsius, -50, 80, "°C");
		requireWithin("humidity", relativeHumidity, 0, 100, "%RH");
	}

	/** As in {@code of("28", "70")}. */
	public static Climate of(String celsius, String relativeHumidity) {
		return new Climate(new BigDecimal(celsius), new BigDecimal(relativeHumidity));
	}

	private static void requireWithin(String what, BigDecimal value, int low, int high, String unit) {
		if (value.compareTo(BigDecimal.valueOf(low)) < 0 || value.compareTo(BigDecimal.valueOf(high)) > 0) {
			throw new IllegalArgumentException(what + " " + value.toPlainString() + " " + unit + " is not " + low
					+ " to " + high);
		}
	}
}
