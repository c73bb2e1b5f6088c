package padwright.engine.leak;

import padwright.engine.length.Length;

/**
 * A leak tester: how hard it blows, and with what air.
 *
 * @param pascals pressure difference, more than 0, at most 20 000 Pa
 * @param air the air it blows
 */
public record Tester(double pascals, Air air) {

	/**
	 * Discharge coefficient of a small sharp-edged round hole, the usual text-book value; from memory, unverified.
	 */
	public static final double HOLE_DISCHARGE = 0.61;

	/** @throws IllegalArgumentException if the pressure is out of range */
	public Tester {
		if (!(pascals > 0 && pascals <= 20_000)) {
			throw new IllegalArgumentException("a tester's pressure of " + pascals + " Pa is not above 0 and at most "
					+ "20 000");
		}
	}

	/**
	 * The diameter of the one round hole through a thin wall that would pass as much air at this pressure, by the
	 * orifice equation Q = C · πd²/4 · √(2Δp/ρ), C = {@value #HOLE_DISCHARGE}; to the nanometre.
	 *
	 * @param millilitresPerMinute 0 or more
	 */
	public Length equivalentHole(double millilitresPerMinute) {
		double speed = HOLE_DISCHARGE * StrictMath.sqrt(2 * pascals / air.density());
		double area = Slit.cubicMetresPerSecond(millilitresPerMinute) / speed;
		return new Length(Math.round(1e9 * StrictMath.sqrt(4 * area / Math.PI)));
	}
}
