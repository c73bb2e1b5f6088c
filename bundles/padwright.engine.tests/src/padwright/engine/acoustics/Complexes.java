package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.complex.Complex;

/** Complex numbers as tests need them. */
final class Complexes {

	private Complexes() {
	}

	/** Reads {@code 440.5+j12} or {@code 0.03-j0.7}. */
	static Complex parse(String text) {
		int at = text.indexOf('j');
		return new Complex(Double.parseDouble(text.substring(0, at - 1)),
				Double.parseDouble(text.charAt(at - 1) + text.substring(at + 1)));
	}

	/** Whether both are equal to within this share of their size. */
	static void assertNear(Complex expected, Complex actual, double share) {
		double difference = expected.subtract(actual).norm() / expected.norm();
		assertTrue(difference <= share, () -> "expected " + expected + " but was " + actual + ", off by " + difference);
	}
}
