package padwright.engine.clock;

import java.math.BigDecimal;

/**
 * A position on the clock of a pad, in half hours. 12 o'clock is station 0 and looks at the hinge unless the key
 * system says otherwise; hours run clockwise as seen from the pad side.
 *
 * @param station half hours after 12 o'clock, 0 to 23
 */
public record ClockHour(int station) implements Comparable<ClockHour> {

	/** Half hours, and so stations, around the clock. */
	public static final int STATIONS = 24;

	/** @throws IllegalArgumentException if {@code station} is not 0 to 23 */
	public ClockHour {
		if (station < 0 || station >= STATIONS) {
			throw new IllegalArgumentException("station " + station + " is not 0 to 23");
		}
	}

	/** The position of a whole hour, 1 to 12. */
	public static ClockHour ofHour(int hour) {
		return ofHour(BigDecimal.valueOf(hour));
	}

	/**
	 * The position of an hour from 1 to 12.5 in steps of a half; 12.5 is half past twelve.
	 *
	 * @throws IllegalArgumentException if it is out of range or not a half hour
	 */
	public static ClockHour ofHour(BigDecimal hour) {
		BigDecimal halves = hour.add(hour).stripTrailingZeros();
		if (halves.scale() > 0 || halves.compareTo(BigDecimal.valueOf(2)) < 0
				|| halves.compareTo(BigDecimal.valueOf(25)) > 0) {
			throw new IllegalArgumentException(
					hour.toPlainString() + " is not an hour of the clock (1 to 12.5 in half hours)");
		}
		return new ClockHour(halves.intValueExact() % STATIONS);
	}

	/** The position {@code halfHours} later (earlier if negative), around the clock. */
	public ClockHour plusHalfHours(int halfHours) {
		return new ClockHour(Math.floorMod(station + halfHours, STATIONS));
	}

	/** Half hours clockwise from here to {@code other}, 0 to 23. */
	public int halfHoursTo(ClockHour other) {
		return Math.floorMod(other.station - station, STATIONS);
	}

	/** Angle clockwise from 12 o'clock in radians, 0 to below 2π. */
	public double angle() {
		return 2 * Math.PI * station / STATIONS;
	}

	/** The hour as it is written in a plan: 12, 12.5, 1, 1.5 … 11.5. */
	public BigDecimal hour() {
		int halves = station < 2 ? station + STATIONS : station;
		return halves % 2 == 0 ? BigDecimal.valueOf(halves / 2) : BigDecimal.valueOf(halves * 5L, 1);
	}

	@Override
	public int compareTo(ClockHour other) {
		return Integer.compare(station, other.station);
	}

	/** As in a plan: {@code 1.5} for half past one. */
	@Override
	public String toString() {
		return hour().toPlainString();
	}
}
