package padwright.engine.acoustics;

import java.util.Arrays;
import java.util.function.DoubleFunction;

import org.hipparchus.analysis.polynomials.PolynomialFunctionLagrangeForm;
import org.hipparchus.complex.Complex;

/**
 * Finds where the imaginary part of an impedance rises through zero: from a guess by the impedances known around it, by
 * Newton's steps.
 *
 * @param impedance by frequency in Hz
 * @param characteristic what heights are told over, in Pa·s/m³
 */
record ResonanceSearch(DoubleFunction<Complex> impedance, double characteristic) {

	/** Share of the frequency over which its slope is taken. */
	private static final double NEAR = 1e-5;
	/** Behind a step smaller than this share nothing is left, since steps get smaller by their square. */
	private static final double SMALL = 1e-5;
	private static final int MOST_STEPS = 50;

	/** Whether a resonance lies between a frequency and the next. */
	static boolean rises(Complex below, Complex above) {
		return below.getImaginary() < 0 && above.getImaginary() >= 0;
	}

	/**
	 * The resonance between a frequency and the next.
	 *
	 * @param index of the first of them
	 * @param hertz ascending
	 * @param known impedances at them
	 */
	Resonance after(int index, double[] hertz, Complex[] known) {
		double below = hertz[index];
		double above = hertz[index + 1];
		double at = Math.min(above, Math.max(below, guess(index, hertz, known)));
		for (int step = 0;; step++) {
			Complex here = impedance.apply(at);
			double slope = (impedance.apply(at * (1 + NEAR)).getImaginary() - here.getImaginary()) / (at * NEAR);
			double next = at - here.getImaginary() / slope;
			if (Math.abs(next - at) < SMALL * at || step == MOST_STEPS) {
				return resonance(next, here.getReal(), slope);
			}
			below = here.getImaginary() < 0 ? at : below;
			above = here.getImaginary() < 0 ? above : at;
			at = next > below && next < above ? next : (below + above) / 2;
		}
	}

	/** By a cubic through the four nearest, in which the frequency depends on the impedance. */
	private static double guess(int index, double[] hertz, Complex[] known) {
		int from = Math.max(0, index - 1);
		int to = Math.min(hertz.length, index + 3);
		double[] imaginary = Arrays.stream(known, from, to).mapToDouble(Complex::getImaginary).toArray();
		return new PolynomialFunctionLagrangeForm(imaginary, Arrays.copyOfRange(hertz, from, to)).value(0);
	}

	private Resonance resonance(double hertz, double resistance, double slope) {
		return new Resonance(hertz, 20 * StrictMath.log10(characteristic / resistance), 2 * resistance / slope);
	}
}
