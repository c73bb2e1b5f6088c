package padwright.engine.calibration;

import java.util.function.ToDoubleFunction;

import padwright.engine.levelling.Stiffness;

/**
 * The stiffnesses 0 to 1 on an even scale from 0 to 1, linear well below a thousandth and logarithmic above, so that
 * soft felt and a rigid base are far apart; and the search for the best on it.
 */
final class StiffnessScale {

	private static final double BEND = 1e-3;
	private static final double DECADES = StrictMath.log1p(1 / BEND);
	private static final int STEPS = 400;
	private static final int HALVINGS = 40;
	private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

	/**
	 * Part of the scale.
	 *
	 * @param best where the measure is highest
	 * @param low where it first comes near enough to that
	 * @param high where it last does
	 */
	record Range(double best, double low, double high) {

		double width() {
			return high - low;
		}

		double middle() {
			return (low + high) / 2;
		}
	}

	private final ToDoubleFunction<Stiffness> measure;

	private StiffnessScale(ToDoubleFunction<Stiffness> measure) {
		this.measure = measure;
	}

	static Stiffness at(double mark) {
		return new Stiffness(Math.min(1, BEND * StrictMath.expm1(mark * DECADES)));
	}

	/** The best mark, and the marks between which the measure is within {@code drop} of it. */
	static Range search(ToDoubleFunction<Stiffness> measure, double drop) {
		return new StiffnessScale(measure).search(drop);
	}

	private Range search(double drop) {
		double[] values = new double[STEPS + 1];
		int highest = 0;
		for (int step = 0; step <= STEPS; step++) {
			values[step] = valueAt(mark(step));
			highest = values[step] > values[highest] ? step : highest;
		}
		double best = peak(highest, values[highest]);
		double enough = Math.max(values[highest], valueAt(best)) - drop;
		return new Range(best, firstEnough(values, best, enough), lastEnough(values, best, enough));
	}

	private static double mark(int step) {
		return step / (double) STEPS;
	}

	private double valueAt(double mark) {
		return measure.applyAsDouble(at(mark));
	}

	/** By golden section between the steps beside the highest. */
	private double peak(int highest, double value) {
		double low = mark(Math.max(highest - 1, 0));
		double high = mark(Math.min(highest + 1, STEPS));
		for (int turn = 0; turn < HALVINGS; turn++) {
			double left = high - GOLDEN * (high - low);
			double right = low + GOLDEN * (high - low);
			if (valueAt(left) >= valueAt(right)) {
				high = right;
			} else {
				low = left;
			}
		}
		double peak = (low + high) / 2;
		return valueAt(peak) > value ? peak : mark(highest);
	}

	private double firstEnough(double[] values, double best, double enough) {
		int step = 0;
		while (mark(step) < best && values[step] < enough) {
			step++;
		}
		return step == 0 ? 0 : crossing(mark(step - 1), Math.min(mark(step), best), enough);
	}

	private double lastEnough(double[] values, double best, double enough) {
		int step = STEPS;
		while (mark(step) > best && values[step] < enough) {
			step--;
		}
		return step == STEPS ? 1 : crossing(mark(step + 1), Math.max(mark(step), best), enough);
	}

	private double crossing(double outside, double inside, double enough) {
		double out = outside;
		double in = inside;
		for (int turn = 0; turn < HALVINGS; turn++) {
			double middle = (out + in) / 2;
			if (valueAt(middle) >= enough) {
				in = middle;
			} else {
				out = middle;
			}
		}
		return in;
	}
}
