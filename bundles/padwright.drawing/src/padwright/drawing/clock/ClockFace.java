package padwright.drawing.clock;

import padwright.engine.clock.ClockHour;

/**
 * Where things are on the dial. Radii are multiples of a unit, 1/26 of the diameter, so that a clock of 26 mm has a
 * unit of 1 mm.
 */
record ClockFace(double diameter, ClockHour atTop) {

	/** Film lies between these. */
	static final double FILM_INNER = 1.6;
	static final double FILM_OUTER = 6.75;
	/** The rim itself; the gap is drawn outward from it. */
	static final double RIM = 7.15;
	static final double BAND_OUTER = 8.8;
	/** Middle of the words above and below. */
	static final double WORDS = 12.35;

	private static final double UNITS = 26;

	ClockFace {
		if (!(diameter > 0)) {
			throw new IllegalArgumentException("a clock cannot be " + diameter + " mm across");
		}
	}

	/** Millimetres of {@code units}. */
	double mm(double units) {
		return units * diameter / UNITS;
	}

	/** Direction on the paper of an hour in radians clockwise from straight up. */
	double angle(ClockHour hour) {
		return angle(hour.station());
	}

	/** Direction on the paper of a station, whole or not. */
	double angle(double station) {
		return (station - atTop.station()) * 2 * Math.PI / ClockHour.STATIONS;
	}

	/** X of the point this many units out in a direction. */
	double x(double units, double angle) {
		return mm(units) * StrictMath.sin(angle);
	}

	double y(double units, double angle) {
		return -mm(units) * StrictMath.cos(angle);
	}
}
