package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.complex.Complex;

/**
 * Finds where the imaginary part of an impedance rises through zero.
 *
 * @param impedance by frequency in Hz
 * @param characteristic what heights are told over, in Pa·s/m³
 */
record ResonanceSearch(DoubleFunction<Complex> impedance, double characteristic) {

	private static final double HERTZ = 1e-7;
	private static final double RELATIVE = 1e-12;
	private static final int ORDER = 5;
	private static final int MOST_STEPS = 100;
	/** Share of the frequency over which its slope is taken. */
	private static final double NEAR = 1e-5;

	/**
	 * The resonances between frequencies that lie closer together than two resonances do.
	 *
	 * @param hertz ascending
	 * @param known impedances at them
	 */
	List<Resonance> between(double[] hertz, Complex[] known) {
		List<Resonance> resonances = new ArrayList<>();
		for (int index = 1; index < hertz.length; index++) {
			if (known[index - 1].getImaginary() < 0 && known[index].getImaginary() >= 0) {
				resonances.add(refined(hertz[index - 1], hertz[index]));
			}
		}
		return resonances;
	}

	private Resonance refined(double below, double above) {
		double zero = new BracketingNthOrderBrentSolver(RELATIVE, HERTZ, ORDER).solve(MOST_STEPS,
				hertz -> impedance.apply(hertz).getImaginary(), below, above);
		double step = zero * NEAR;
		Complex before = impedance.apply(zero - step);
		Complex after = impedance.apply(zero + step);
		double resistance = (before.getReal() + after.getReal()) / 2;
		double slope = (after.getImaginary() - before.getImaginary()) / (2 * step);
		return new Resonance(zero, 20 * StrictMath.log10(characteristic / resistance), 2 * resistance / slope);
	}
}
