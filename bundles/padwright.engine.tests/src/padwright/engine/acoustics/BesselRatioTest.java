package padwright.engine.acoustics;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BesselRatioTest {

	/**
	 * The integrals of Bessel, J₀(z) = (1/π) ∫ cos(z sin θ) dθ and J₁(z) = (1/π) ∫ cos(θ − z sin θ) dθ over half a turn
	 * (Abramowitz and Stegun 9.1.21), by points so close that all digits are right.
	 */
	@ParameterizedTest
	@ValueSource(doubles = { 0.01, 0.3, 0.7, 1.5, 3.6, 8, 14, 24, 24.9, 25.1, 30, 60, 129, 400 })
	void isThatOfTheIntegrals(double size) {
		Complex z = new Complex(Math.sqrt(0.5), -Math.sqrt(0.5)).multiply(size);
		Complex expected = z.multiply(bessel(z, 0)).divide(bessel(z, 1)).negate().add(2);
		Complexes.assertNear(expected, BesselRatio.of(z.multiply(z)), 2e-12 / Math.min(1, size * size));
	}

	/** The first terms for small z: w = z²/4 + z⁴/96. */
	@ParameterizedTest
	@ValueSource(doubles = { 1e-5, 1e-4, 1e-3 })
	void isThatOfTheSeriesWhereItIsSmall(double size) {
		Complex q = new Complex(0, -size * size);
		Complexes.assertNear(q.divide(4).add(q.multiply(q).divide(96)), BesselRatio.of(q), 1e-13);
	}

	private static Complex bessel(Complex z, int order) {
		int points = 200 + (int) (4 * z.norm());
		Complex sum = Complex.ZERO;
		for (int point = 0; point < 2 * points; point++) {
			double angle = Math.PI * point / points;
			sum = sum.add(z.multiply(-Math.sin(angle)).add(order * angle).cos());
		}
		return sum.divide(2 * points);
	}
}
