package padwright.engine.acoustics;

import org.hipparchus.complex.Complex;

/**
 * Friction and heat at the wall of a round tube go by 2 J₁(z) / (z J₀(z)) = 2 / (2 − w) with z on the diagonal of the
 * complex plane. The library has Bessel functions of real arguments only, and J₀ itself leaves the range of numbers
 * where |z| is large, so w is computed here: by the continued fraction w = q/(4 − q/(6 − q/(8 − …))) in q = z², and for
 * large |z| from the asymptotic series of Hankel (Abramowitz and Stegun 9.1.73 and 9.2.7 to 9.2.10). Within 1e-13 of J₁
 * and J₀ by their integrals. Neither 1 − 2/(2 − w) nor its inverse loses digits in the finest tube.
 */
final class BesselRatio {

	/** Square of |z| from which the asymptotic series is at least as good as the fraction. */
	private static final double LARGE = 625;
	private static final double[] SERIES = quotientSeries(16);

	private BesselRatio() {
	}

	/** w for z² = q, which lies on the negative imaginary axis. */
	static Complex of(Complex q) {
		return q.norm() < LARGE ? fraction(q) : asymptotic(q);
	}

	private static Complex fraction(Complex q) {
		double re = 0;
		double im = 0;
		for (int n = 16 + (int) Math.sqrt(q.norm()); n > 1; n--) {
			double below = 2 * n - re;
			double square = below * below + im * im;
			double newRe = (q.getReal() * below - q.getImaginary() * im) / square;
			im = (q.getImaginary() * below + q.getReal() * im) / square;
			re = newRe;
		}
		return new Complex(re, im);
	}

	/** z J₀/J₁ = jz divided by the series in j/z, since only the wave that decays from the wall counts. */
	private static Complex asymptotic(Complex q) {
		Complex z = q.sqrt();
		double square = z.getReal() * z.getReal() + z.getImaginary() * z.getImaginary();
		double yRe = z.getImaginary() / square;
		double yIm = z.getReal() / square;
		double re = 0;
		double im = 0;
		for (int k = SERIES.length - 1; k >= 0; k--) {
			double newRe = re * yRe - im * yIm + SERIES[k];
			im = re * yIm + im * yRe;
			re = newRe;
		}
		return z.multiplyPlusI().divide(new Complex(re, im)).negate().add(2);
	}

	/** Coefficients of P₁/P₀ in j/z, where P are the asymptotic series of the Hankel functions of order 1 and 0. */
	private static double[] quotientSeries(int length) {
		double[] one = hankelSeries(1, length);
		double[] zero = hankelSeries(0, length);
		double[] quotient = new double[length];
		for (int k = 0; k < length; k++) {
			quotient[k] = one[k];
			for (int i = 0; i < k; i++) {
				quotient[k] -= quotient[i] * zero[k - i];
			}
		}
		return quotient;
	}

	private static double[] hankelSeries(int order, int length) {
		double[] series = new double[length];
		series[0] = 1;
		for (int k = 1; k < length; k++) {
			double odd = 2 * k - 1;
			series[k] = series[k - 1] * (4 * order * order - odd * odd) / (8 * k);
		}
		return series;
	}
}
