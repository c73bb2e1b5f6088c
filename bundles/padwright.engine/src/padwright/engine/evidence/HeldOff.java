package padwright.engine.evidence;

import padwright.engine.length.Length;

/**
 * How far a key may be held off where no hour drags: not at all half of the time, for the face may touch between the
 * hours that were read; else up to a few thou (a bench estimate, unverified).
 */
final class HeldOff {

	private static final double DEVIATION = Length.thou("1.5").nanometres();

	private HeldOff() {
	}

	/** In nm, of a standard normal number. */
	static double height(double normal) {
		return Math.max(0, normal) * DEVIATION;
	}
}
