package padwright.drawing.clock;

import padwright.engine.clock.ClockHour;

/**
 * Where things are on the dial. Radii are multiples of a unit, 1/26 of the diameter, so that a clock of 26 mm has a
 * unit of 1 mm.
 */
public record ClockFace(double diameter, ClockHour atTop) {

	/** Film lies between these. */
	static final double FILM_INNER = 1.6;
	public static final double FILM_OUTER = 6.75;
	/** The rim itself; the gap is drawn outward from it. */
	public static final double RIM = 7.15;
	static final double BAND_OUTER = 8.8;
	/** Middle of the words above and below. */
	static final double WORDS = 12.35;

	private static final double UNITS = 26;

	/** @throws IllegalArgumentException if the diameter is not positive */
	public ClockFace {
		if (!(diameter > 0)) {
			throw new IllegalArgumentException("a clock cannot be " + diameter + " mm across");
		}
	}

	/** Millimetres of {@code units}. */
	public double mm(double units) {
		return units * diameter / UNITS;
	}

	/** Direction on the paper of an hour in radians clockwise from straight up. */
	public double angle(ClockHour hour) {
		return angle(hour.station());
	}

	/** Direction on the paper of a station, whole or not. */
	double angle(double station) {
		return (station - atTop.station()) * 2 * Math.PI / ClockHour.STATIONS;
	}

	/** X of the point this many units out in a direction. */
	public double x(double units, double angle) {
		return mm(units) * StrictMath.sin(angle);
	}

	/** Y of the point this many units out in a direction. */
	public double y(double units, double angle) {
		return -mm(units) * StrictMath.cos(angle);
	}

	/** The half hour that lies nearest to the direction of a point about the middle. */
	public ClockHour hourAt(double x, double y) {
		double turn = StrictMath.atan2(x, -y) / (2 * Math.PI);
		return atTop.plusHalfHours((int) Math.round(turn * ClockHour.STATIONS));
	}
}
