package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;

/** Sums of powers. */
final class Series {

	private Series() {
	}

	/** c₀ + c₁ x + c₂ x² + … */
	static <T extends CalculusFieldElement<T>> T at(T x, double... coefficients) {
		T sum = x.newInstance(coefficients[coefficients.length - 1]);
		for (int k = coefficients.length - 2; k >= 0; k--) {
			sum = sum.multiply(x).add(coefficients[k]);
		}
		return sum;
	}
}
