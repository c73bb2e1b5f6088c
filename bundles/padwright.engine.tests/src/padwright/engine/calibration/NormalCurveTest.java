package padwright.engine.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class NormalCurveTest {

	/** Simpson's rule over the density. */
	@Test
	void isTheAreaUnderItsDensity() {
		for (double low = -8; low < 8; low += 0.37) {
			double high = low + 0.7;
			double area = 0;
			int steps = 400;
			double step = (high - low) / steps;
			for (int i = 0; i <= steps; i++) {
				int weight = i == 0 || i == steps ? 1 : i % 2 == 0 ? 2 : 4;
				area += weight * NormalCurve.density(low + i * step) * step / 3;
			}
			assertEquals(1, NormalCurve.between(low, high) / area, 1e-9);
		}
	}

	@Test
	void isHalfBelowItsMiddleAndAllBelowInfinity() {
		assertEquals(0.5, NormalCurve.below(0));
		assertEquals(1, NormalCurve.below(Double.POSITIVE_INFINITY));
		assertEquals(0, NormalCurve.below(Double.NEGATIVE_INFINITY));
		assertEquals(1, NormalCurve.between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
		assertEquals(0, NormalCurve.density(Double.NEGATIVE_INFINITY));
	}

	/** The textbook points of 95 % and 99.9 %. */
	@Test
	void hasItsKnownPoints() {
		assertEquals(0.975, NormalCurve.below(1.959963984540054), 1e-14);
		assertEquals(0.0005, NormalCurve.below(-3.290526731491895), 1e-14);
	}

	@Test
	void isContinuousWhereSeriesAndFractionMeet() {
		double z = 2 * Math.sqrt(2);
		assertEquals(1, NormalCurve.below(-z * (1 - 1e-15)) / NormalCurve.below(-z * (1 + 1e-15)), 1e-9);
	}
}
