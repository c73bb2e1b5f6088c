package padwright.engine.closing;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * The hinge that a key turns on, as the pad sees it.
 *
 * @param side where on the clock of the pad it is nearest
 * @param reach mean radius of the rim over the distance from the hinge's axis to the middle of the cup, 0 to below 1,
 *        no unit; 0 is a key that comes down flat
 */
public record Hinge(ClockHour side, double reach) {

	/** From the rim to the axis where nobody measured it (common practice, no source). */
	private static final Length BEYOND_THE_RIM = Length.millimetres("5");
	private static final double[] COSINE = cosines();

	/** @throws IllegalArgumentException if the reach is not 0 to below 1 */
	public Hinge {
		if (!(reach >= 0 && reach < 1)) {
			throw new IllegalArgumentException("a reach of " + reach + " is not 0 to below 1");
		}
	}

	/**
	 * The hinge of an arm that was measured.
	 *
	 * @param rimRadius mean radius of the rim, more than zero
	 * @param arm from the hinge's axis to the middle of the cup
	 * @throws IllegalArgumentException if the arm is not longer than the radius, or the radius not above zero
	 */
	public static Hinge of(ClockHour side, Length rimRadius, Length arm) {
		if (rimRadius.signum() <= 0 || !arm.isLongerThan(rimRadius)) {
			throw new IllegalArgumentException("an arm of " + arm + " does not reach beyond a rim of radius " + rimRadius);
		}
		return new Hinge(side, rimRadius.nanometres() / (double) arm.nanometres());
	}

	/** The hinge of an arm that nobody measured: 5 mm longer than the radius of the rim. */
	public static Hinge assumed(ClockHour side, Length rimRadius) {
		return of(side, rimRadius, rimRadius.plus(BEYOND_THE_RIM));
	}

	/**
	 * How far the face comes down at a station while its middle comes down by one: 1 − reach · cos θ, θ from the hinge's
	 * side, 0 to 2.
	 */
	public double weight(int station) {
		return 1 - reach * cosine(station - side.station());
	}

	/** Cosine of an angle of {@code stations} half hours. */
	private static double cosine(int stations) {
		return COSINE[Math.floorMod(stations, ClockHour.STATIONS)];
	}

	private static double[] cosines() {
		double[] cosine = new double[ClockHour.STATIONS];
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			int mirrored = Math.min(station, ClockHour.STATIONS - station);
			cosine[station] = StrictMath.cos(2 * Math.PI * mirrored / ClockHour.STATIONS);
		}
		return cosine;
	}
}
