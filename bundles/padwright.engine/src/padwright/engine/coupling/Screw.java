package padwright.engine.coupling;

import padwright.engine.length.Length;

/**
 * A right-hand adjusting screw; turned in, it moves toward the driven key.
 *
 * @param pitch travel in one turn, more than zero
 */
public record Screw(Length pitch) implements Adjuster {

	/** @throws IllegalArgumentException if the pitch is not positive */
	public Screw {
		if (pitch.signum() <= 0) {
			throw new IllegalArgumentException("a screw of pitch " + pitch + " does not travel");
		}
	}

	@Override
	public ScrewTurn adjustmentFor(Length travel) {
		return new ScrewTurn(travel, pitch);
	}
}
