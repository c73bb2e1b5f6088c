package padwright.exchange.readings;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import padwright.engine.clock.ClockHour;
import padwright.exchange.readings.MeasuredLength.Unit;

/**
 * The head of a column.
 *
 * @param role what stands below
 * @param hour of a column of readings at one hour
 * @param unit if the head names one
 */
record ColumnHead(Role role, Optional<ClockHour> hour, Optional<Unit> unit) {

	/** What a column is for. */
	enum Role {
		KEY, HOUR, READING, UNIT, OTHER
	}

	private static final Map<String, Role> NAMES = Map.ofEntries(Map.entry("key", Role.KEY), Map.entry("pad", Role.KEY),
			Map.entry("note", Role.KEY), Map.entry("name", Role.KEY), Map.entry("hour", Role.HOUR),
			Map.entry("clock", Role.HOUR), Map.entry("position", Role.HOUR), Map.entry("at", Role.HOUR),
			Map.entry("reading", Role.READING), Map.entry("value", Role.READING), Map.entry("gap", Role.READING),
			Map.entry("measured", Role.READING), Map.entry("empty", Role.READING), Map.entry("unit", Role.UNIT));
	private static final Pattern WITH_UNIT = Pattern
			.compile("(.*?)[\\s_]*[\\[(]?\\s*(" + MeasuredLength.pattern() + ")\\s*[\\])]?");
	private static final Pattern HOUR =
			Pattern.compile("(?:at|hour|h)?\\s*([0-9]{1,2})(?:[.,](0|5)|:(00|30))?\\s*(?:h|o['\u2019]?clock)?");

	static ColumnHead of(String written) {
		String name = written.strip().toLowerCase(Locale.ROOT);
		Matcher withUnit = WITH_UNIT.matcher(name);
		boolean hasUnit = withUnit.matches() && !withUnit.group(1).isEmpty();
		String what = hasUnit ? withUnit.group(1).strip() : name;
		Optional<Unit> unit = hasUnit ? MeasuredLength.unit(withUnit.group(2)) : Optional.empty();
		Optional<ClockHour> hour = hour(what);
		return new ColumnHead(hour.isPresent() ? Role.READING : NAMES.getOrDefault(what, Role.OTHER), hour, unit);
	}

	/** An hour as it is written in a head or cell, as {@code 3}, {@code 1.5}, {@code 1:30} or {@code 12 o'clock}. */
	static Optional<ClockHour> hour(String written) {
		Matcher hour = HOUR.matcher(written.strip().toLowerCase(Locale.ROOT));
		if (!hour.matches()) {
			return Optional.empty();
		}
		boolean half = "5".equals(hour.group(2)) || "30".equals(hour.group(3));
		try {
			return Optional.of(ClockHour.ofHour(new BigDecimal(hour.group(1)).add(new BigDecimal(half ? "0.5" : "0"))));
		} catch (IllegalArgumentException notOnTheClock) {
			return Optional.empty();
		}
	}
}
