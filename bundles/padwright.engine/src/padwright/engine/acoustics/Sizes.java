package padwright.engine.acoustics;

import padwright.engine.length.Length;

/** Sizes in metres, and what is wrong with them. */
final class Sizes {

	private static final double NANOMETRES = 1e9;

	private Sizes() {
	}

	static double metres(Length length) {
		return length.nanometres() / NANOMETRES;
	}

	static void requirePositive(String what, double size) {
		if (!(size > 0 && size < Double.POSITIVE_INFINITY)) {
			throw new IllegalArgumentException(what + " must be above 0, not " + size);
		}
	}

	static void requireBetween(String what, double size, double least, double most) {
		if (!(size >= least && size <= most)) {
			throw new IllegalArgumentException(what + " must be " + least + " to " + most + ", not " + size);
		}
	}
}
