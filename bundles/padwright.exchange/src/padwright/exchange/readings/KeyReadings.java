package padwright.exchange.readings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * What an indicator measured around one key.
 *
 * @param key  as the file calls it
 * @param gaps by hour, in the order of the file
 * @param line of the first reading, from 1
 */
public record KeyReadings(String key, Map<ClockHour, Length> gaps, int line) {

	public KeyReadings {
		gaps = Collections.unmodifiableMap(new LinkedHashMap<>(gaps));
	}
}
