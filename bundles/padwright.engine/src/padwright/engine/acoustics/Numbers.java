package padwright.engine.acoustics;

import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;

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
		public Complex function(Complex argument, UnaryOperator<Complex> function, BinaryOperator<Complex> slope) {
			return function.apply(argument);
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
			public FieldGradient<Complex> function(FieldGradient<Complex> argument, UnaryOperator<Complex> function,
					BinaryOperator<Complex> slope) {
				Complex value = function.apply(argument.getValue());
				return argument.compose(value, slope.apply(argument.getValue(), value));
			}
		};
	}

	T constant(Complex value);

	Complex value(T number);

	/**
	 * A function of a number that the library has not.
	 *
	 * @param slope from the argument and the value there
	 */
	T function(T argument, UnaryOperator<Complex> function, BinaryOperator<Complex> slope);

	default boolean isPlain() {
		return this == PLAIN;
	}
}
