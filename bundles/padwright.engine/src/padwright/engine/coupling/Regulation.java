package padwright.engine.coupling;

import padwright.engine.length.Length;

/**
 * One linked pair that does not close together, and its cure. With light at the driven key the driver is down first:
 * the adjuster goes in (or film is added). With light at the driver the driven key is down first and holds it up: out
 * (or film is taken away).
 *
 * @param coupling the pair
 * @param side where the light is
 * @param light the gap still open there when the other pad has closed, 0 or more
 */
public record Regulation(Coupling coupling, Side side, Length light) {

	/** The end of a coupling at which light is seen. */
	public enum Side {
		DRIVER, DRIVEN
	}

	/** @throws IllegalArgumentException if the light is negative */
	public Regulation {
		if (light.signum() < 0) {
			throw new IllegalArgumentException("light of " + light + " at " + coupling
					+ " is negative; name the other side instead");
		}
	}

	/**
	 * How far the contact must move, positive toward the driven key: light at the driven key over the ratio, or
	 * back by the light at the driver.
	 */
	public Length travel() {
		return side == Side.DRIVEN ? coupling.driverTravel(light) : light.negated();
	}

	/** The screw turn or the film that moves it there. */
	public Adjustment adjustment() {
		return coupling.adjuster().adjustmentFor(travel());
	}
}
