package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.List;

import org.hipparchus.analysis.differentiation.FieldGradient;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.complex.Complex;

/**
 * The impedance of an instrument and its derivatives by everything, in one pass up the bore and one down. A change dM
 * of one matrix changes the impedance Z = p/u at the upper end by w dM v, where v is what there is behind the element
 * and w the row (1, −Z)/u carried down to it; so each element is differentiated by its own few sizes only.
 */
final class Slopes {

	private final double[] real;
	private final double[] imaginary;
	private Complex byOmega = Complex.ZERO;
	private final Complex impedance;

	Slopes(List<Part> parts, Assembly.End end, int dimensions, double hertz, AirConstants air) {
		real = new double[dimensions];
		imaginary = new double[dimensions];
		List<TwoPort<FieldGradient<Complex>>> matrices = parts.stream().map(part -> matrix(part, hertz, air)).toList();
		Flow<FieldGradient<Complex>> tail = tail(end, hertz, air);
		List<Flow<Complex>> flows = flows(matrices, tail);
		Flow<Complex> input = flows.get(0);
		impedance = input.impedance();
		Complex left = input.flow().reciprocal();
		Complex right = impedance.divide(input.flow()).negate();
		for (int index = 0; index < parts.size(); index++) {
			TwoPort<FieldGradient<Complex>> matrix = matrices.get(index);
			collect(matrix, left, right, flows.get(index + 1), parts.get(index).sizes());
			Complex down = left.multiply(matrix.a().getValue()).add(right.multiply(matrix.c().getValue()));
			right = left.multiply(matrix.b().getValue()).add(right.multiply(matrix.d().getValue()));
			left = down;
		}
		add(slopes(tail.pressure(), left, tail.flow(), right), end.sizes());
	}

	Complex impedance() {
		return impedance;
	}

	/** Derivative by 2π times the frequency. */
	Complex byOmega() {
		return byOmega;
	}

	/** Derivative by a dimension, in Pa·s/m³ a metre. */
	Complex by(int dimension) {
		return new Complex(real[dimension], imaginary[dimension]);
	}

	private static TwoPort<FieldGradient<Complex>> matrix(Part part, double hertz, AirConstants air) {
		double[] sizes = part.element().sizes();
		return part.element().twoPort(Tone.varying(hertz, air, sizes.length), variables(sizes));
	}

	private static Flow<FieldGradient<Complex>> tail(Assembly.End end, double hertz, AirConstants air) {
		double[] sizes = end.tail().sizes();
		return end.tail().flow(Tone.varying(hertz, air, sizes.length), variables(sizes));
	}

	/** The first variable is ω. */
	private static List<FieldGradient<Complex>> variables(double... sizes) {
		List<FieldGradient<Complex>> variables = new ArrayList<>(sizes.length);
		for (int index = 0; index < sizes.length; index++) {
			variables.add(FieldGradient.variable(sizes.length + 1, index + 1, new Complex(sizes[index])));
		}
		return variables;
	}

	/** Before each element, and behind the last. */
	private static List<Flow<Complex>> flows(List<TwoPort<FieldGradient<Complex>>> matrices,
			Flow<FieldGradient<Complex>> tail) {
		Flow<Complex> flow = new Flow<>(tail.pressure().getValue(), tail.flow().getValue());
		List<Flow<Complex>> flows = new ArrayList<>(List.of(flow));
		for (int index = matrices.size() - 1; index >= 0; index--) {
			TwoPort<FieldGradient<Complex>> matrix = matrices.get(index);
			flow = new TwoPort<>(matrix.a().getValue(), matrix.b().getValue(), matrix.c().getValue(),
					matrix.d().getValue()).before(flow);
			flows.add(0, flow);
		}
		return flows;
	}

	private void collect(TwoPort<FieldGradient<Complex>> matrix, Complex left, Complex right, Flow<Complex> behind,
			List<Gradient> sizes) {
		Complex[] above = slopes(matrix.a(), left.multiply(behind.pressure()), matrix.b(),
				left.multiply(behind.flow()));
		Complex[] below = slopes(matrix.c(), right.multiply(behind.pressure()), matrix.d(),
				right.multiply(behind.flow()));
		for (int index = 0; index < above.length; index++) {
			above[index] = above[index].add(below[index]);
		}
		add(above, sizes);
	}

	/** Derivatives of one number times a factor and another times another. */
	private static Complex[] slopes(FieldGradient<Complex> one, Complex factor, FieldGradient<Complex> other,
			Complex otherFactor) {
		Complex[] first = one.getGradient();
		Complex[] second = other.getGradient();
		Complex[] slopes = new Complex[first.length];
		for (int index = 0; index < slopes.length; index++) {
			slopes[index] = first[index].multiply(factor).add(second[index].multiply(otherFactor));
		}
		return slopes;
	}

	private void add(Complex[] slopes, List<Gradient> sizes) {
		byOmega = byOmega.add(slopes[0]);
		for (int size = 0; size < sizes.size(); size++) {
			double[] byDimensions = sizes.get(size).getGradient();
			for (int dimension = 0; dimension < byDimensions.length; dimension++) {
				real[dimension] += slopes[size + 1].getReal() * byDimensions[dimension];
				imaginary[dimension] += slopes[size + 1].getImaginary() * byDimensions[dimension];
			}
		}
	}
}
