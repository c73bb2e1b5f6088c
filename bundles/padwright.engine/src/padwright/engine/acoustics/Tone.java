package padwright.engine.acoustics;

import java.util.HashMap;
import java.util.Map;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.FieldGradient;
import org.hipparchus.complex.Complex;

/**
 * One frequency in one air. Quantities go as the real part of e^(st) with s = jω. Remembers the tubes that were met, so
 * of one thread.
 */
final class Tone<T extends CalculusFieldElement<T>> {

	private final Numbers<T> numbers;
	private final T omega;
	private final T s;
	private final AirConstants air;
	private final Map<Double, Line<T>> lines = new HashMap<>();

	private Tone(Numbers<T> numbers, T omega, T s, AirConstants air) {
		this.numbers = numbers;
		this.omega = omega;
		this.s = s;
		this.air = air;
	}

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

	Numbers<T> numbers() {
		return numbers;
	}

	/** jω, in 1/s. */
	T s() {
		return s;
	}

	AirConstants air() {
		return air;
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

	/** A tube of this radius. */
	Line<T> line(T radius) {
		return numbers.isPlain()
				? lines.computeIfAbsent(numbers.value(radius).getReal(), met -> Line.of(this, radius))
				: Line.of(this, radius);
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
