package padwright.engine.coupling;

import java.math.BigDecimal;
import java.math.RoundingMode;

import padwright.engine.length.Length;

/**
 * One key that closes another.
 *
 * @param driver the key that is pressed
 * @param driven the key that it closes
 * @param adjuster what sets the moment of contact
 * @param ratio travel at the pad of the driven key over travel at the pad of the driver, more than 0. The adjuster is
 *     taken to sit on the driver as far from the hinge as its pad.
 */
public record Coupling(String driver, String driven, Adjuster adjuster, BigDecimal ratio) {

	/** @throws IllegalArgumentException if a name is blank, a key drives itself or the ratio is not positive */
	public Coupling {
		if (driver.isBlank() || driven.isBlank()) {
			throw new IllegalArgumentException("a coupling needs the names of two keys");
		}
		if (driver.equals(driven)) {
			throw new IllegalArgumentException("key " + driver + " cannot close itself");
		}
		if (ratio.signum() <= 0) {
			throw new IllegalArgumentException("lever ratio " + ratio + " of " + driver + " > " + driven
					+ " is not above zero");
		}
	}

	/** A coupling in which both pads travel alike. */
	public Coupling(String driver, String driven, Adjuster adjuster) {
		this(driver, driven, adjuster, BigDecimal.ONE);
	}

	/** How far the driver's pad moves while the driven one moves so far: over the ratio, rounded half even to 1 nm. */
	public Length driverTravel(Length drivenTravel) {
		return new Length(BigDecimal.valueOf(drivenTravel.nanometres()).divide(ratio, 0, RoundingMode.HALF_EVEN)
				.longValueExact());
	}

	/** As in a plan: {@code F > Fs}. */
	@Override
	public String toString() {
		return driver + " > " + driven;
	}
}
