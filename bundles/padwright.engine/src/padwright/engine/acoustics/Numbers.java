package padwright.engine.acoustics;

import java.util.Arrays;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.FieldGradient;
import org.hipparchus.complex.Complex;

/**
 * The two kinds of number that every formula here is computed with: complex numbers, and complex numbers that carry
 * their derivatives along. Both are of the library Hipparchus.
 */
interface Numbers<T extends CalculusFieldElement<T>> {

	/** Without derivatives. */
	Numbers<Complex> PLAIN = new Numbers<>() {
		@Override
		public Complex constant(Complex value) {
			return value;
		}

		@Override
		public Complex value(Complex number) {
			return number;
		}

		@Override
		public Complex function(Complex one, Complex other, Complex value, Complex byOne, Complex byOther) {
			return value;
		}
	};

	/** With derivatives by so many quantities. */
	static Numbers<FieldGradient<Complex>> varying(int quantities) {
		return new Numbers<>() {
			@Override
			public FieldGradient<Complex> constant(Complex value) {
				return FieldGradient.constant(quantities, value);
			}

			@Override
			public Complex value(FieldGradient<Complex> number) {
				return number.getValue();
			}

			@Override
			public FieldGradient<Complex> function(FieldGradient<Complex> one, FieldGradient<Complex> other,
					Complex value, Complex byOne, Complex byOther) {
				Complex[] slopes = new Complex[quantities];
				Arrays.setAll(slopes, index -> one.getPartialDerivative(index).multiply(byOne)
						.add(other.getPartialDerivative(index).multiply(byOther)));
				return new FieldGradient<>(value, slopes);
			}
		};
	}

	T constant(Complex value);

	Complex value(T number);

	/** A function of two numbers that the library has not, known by its value and slopes there. */
	T function(T one, T other, Complex value, Complex byOne, Complex byOther);

	default boolean isPlain() {
		return this == PLAIN;
	}
}
