package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.FieldGradient;
import org.hipparchus.complex.Complex;

/**
 * One frequency in one air. Quantities go as the real part of e^(st) with s = jω.
 *
 * @param numbers to compute with
 * @param omega 2π times the frequency, in 1/s
 * @param s jω
 */
record Tone<T extends CalculusFieldElement<T>>(Numbers<T> numbers, T omega, T s, AirConstants air) {

	static Tone<Complex> of(double hertz, AirConstants air) {
		double omega = 2 * Math.PI * hertz;
		return new Tone<>(Numbers.PLAIN, new Complex(omega), new Complex(0, omega), air);
	}

	/** With derivatives: by ω first, then by so many sizes. */
	static Tone<FieldGradient<Complex>> varying(double hertz, AirConstants air, int sizes) {
		Complex omega = new Complex(2 * Math.PI * hertz);
		FieldGradient<Complex> variable = FieldGradient.variable(sizes + 1, 0, omega);
		return new Tone<>(Numbers.varying(sizes + 1), variable, variable.multiply(Complex.I), air);
	}

	T number(double value) {
		return numbers.constant(new Complex(value));
	}

	/** k = ω / c, in 1/m. */
	T wavenumber() {
		return omega.divide(air.speed());
	}

	/** jk, in 1/m. */
	T imaginaryWavenumber() {
		return s.divide(air.speed());
	}

	/** Impedance of a plane wave without losses, ρ c / (π a²). */
	T impedance(T radius) {
		return radius.multiply(radius).reciprocal().multiply(air.density() * air.speed() / Math.PI);
	}

	/** Impedance sρl / (π a²) of the air in a piece of tube of this radius and length, moved as one. */
	T inertance(T radius, T length) {
		return s.multiply(air.density() / Math.PI).multiply(length).divide(radius.multiply(radius));
	}
}
