package padwright.engine.rim;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * The flatness of a profile: the distance between the two nearest parallel planes that hold all of it (minimum-zone
 * reference planes, ISO 12781-1). It is the smallest spread that any tilt can leave.
 */
public final class MinimumZone {

	private MinimumZone() {
	}

	/**
	 * The width of the zone, rounded to the nanometre.
	 *
	 * <p>By linear programming: weights on stations against as many on others, both in balance about each axis, that
	 * tell the most apart.
	 */
	public static Length of(RimProfile profile) {
		long spread = profile.spread().nanometres();
		if (spread == 0) {
			return Length.ZERO;
		}
		long lowest = profile.stream().min().getAsLong();
		int stations = ClockHour.STATIONS;
		double[] value = new double[2 * stations];
		double[][] balance = new double[3][2 * stations];
		double[][] sides = new double[2][2 * stations];
		for (int i = 0; i < value.length; i++) {
			int station = i % stations;
			int sign = i < stations ? 1 : -1;
			value[i] = sign * (profile.nanometresAt(station) - lowest) / (double) spread;
			balance[0][i] = sign;
			balance[1][i] = sign * FourierBasis.cosine(1, station);
			balance[2][i] = sign * FourierBasis.sine(1, station);
			sides[i / stations][i] = 1;
		}
		return new Length(Math.round(LinearProgram.maximise(value, balance, sides).total() * spread));
	}
}
