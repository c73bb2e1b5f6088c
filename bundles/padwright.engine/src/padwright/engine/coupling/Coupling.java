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
 * @param ratio travel at the adjuster for one unit of light at either pad, more than 0: the adjuster's distance from
 *     the hinge over the pad's (0.5 where it sits half way out). Both keys are taken to turn about one hinge line with
 *     pads equally far out.
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

	/** A coupling with the adjuster as far from the hinge as the pads. */
	public Coupling(String driver, String driven, Adjuster adjuster) {
		this(driver, driven, adjuster, BigDecimal.ONE);
	}

	/** How far the adjuster moves for this light at a pad: light × ratio, rounded half even to the nanometre. */
	public Length travelFor(Length light) {
		return new Length(ratio.multiply(BigDecimal.valueOf(light.nanometres()))
				.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
	}

	/** As in a plan: {@code F > Fs}. */
	@Override
	public String toString() {
		return driver + " > " + driven;
	}
}
