package padwright.engine.coupling;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.engine.length.Length;

/**
 * Light that will show after the stack under a key changed.
 *
 * @param driver the key that is pressed
 * @param lightAt the key whose pad stays open: the driver itself where a driven key now holds it up, or one that it
 *     closes
 * @param light how far, more than zero
 */
public record Upset(String driver, String lightAt, Length light) {

	/** Whether the driver itself is held up by a key it closes. */
	public boolean isAtDriver() {
		return driver.equals(lightAt);
	}

	/** The light at the driver and at every key it closes, where there is any; levers have no pad that could meet a rim. */
	static List<Upset> under(String driver, Collection<String> closed, Map<String, Length> changes,
			Set<String> levers) {
		Set<String> goingDown = new LinkedHashSet<>();
		goingDown.add(driver);
		goingDown.addAll(closed);
		goingDown.removeAll(levers);
		Length stop = goingDown.stream().map(key -> change(key, changes)).max(Length::compareTo).orElse(Length.ZERO);
		return closed.isEmpty() ? List.of() : goingDown.stream()
				.map(key -> new Upset(driver, key, stop.minus(change(key, changes))))
				.filter(upset -> upset.light.signum() > 0)
				.toList();
	}

	private static Length change(String key, Map<String, Length> changes) {
		return changes.getOrDefault(key, Length.ZERO);
	}
}
