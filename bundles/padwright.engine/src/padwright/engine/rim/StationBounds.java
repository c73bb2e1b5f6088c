package padwright.engine.rim;

import java.util.Arrays;
import java.util.List;

import padwright.engine.clock.ClockHour;

/**
 * Between what a profile must lie at each station, in nm.
 *
 * @param lower zero or more
 * @param upper infinite where there is no bound
 */
record StationBounds(double[] lower, double[] upper) {

	static StationBounds open() {
		double[] upper = new double[ClockHour.STATIONS];
		Arrays.fill(upper, Double.POSITIVE_INFINITY);
		return new StationBounds(new double[ClockHour.STATIONS], upper);
	}

	static StationBounds of(List<RimReading> readings) {
		StationBounds bounds = open();
		for (RimReading reading : readings) {
			bounds.raise(reading.hour(), lower(reading));
			bounds.cut(reading.hour(), upper(reading));
		}
		return bounds;
	}

	static double lower(RimReading reading) {
		return reading.atLeast().nanometres();
	}

	static double upper(RimReading reading) {
		return reading.atMost().map(bound -> (double) bound.nanometres()).orElse(Double.POSITIVE_INFINITY);
	}

	void raise(ClockHour hour, double bound) {
		lower[hour.station()] = Math.max(lower[hour.station()], bound);
	}

	void cut(ClockHour hour, double bound) {
		upper[hour.station()] = Math.min(upper[hour.station()], bound);
	}
}
