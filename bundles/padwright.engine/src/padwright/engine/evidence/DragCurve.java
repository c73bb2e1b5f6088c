package padwright.engine.evidence;

import padwright.engine.calibration.NormalCurve;

/**
 * The logarithm of the probability that a hand feels a limit as wider than a gap: ln(ε + (1 − 2ε) Φ(x)), x the way from
 * gap to limit in units of the feel. Once in a hundred a reading says nothing at all (2ε: a crumb under the leaf, a
 * slip of the pencil), so that one wrong reading among many is told by the others instead of moving them. From a table,
 * linear between 1/64ths, within 1e-4.
 */
final class DragCurve {

	private static final double SLIP = 0.005;
	private static final double FARTHEST = 6;
	private static final int STEPS = 64;
	private static final double[] TABLE = table();

	private DragCurve() {
	}

	static double logProbability(double x) {
		double place = (Math.max(-FARTHEST, Math.min(x, FARTHEST)) + FARTHEST) * STEPS;
		int cell = Math.min((int) place, TABLE.length - 2);
		double part = place - cell;
		return TABLE[cell] + part * (TABLE[cell + 1] - TABLE[cell]);
	}

	/** The probability that a reading of this likelihood says nothing of the gap. */
	static double doubt(double logProbability) {
		return SLIP / StrictMath.exp(logProbability);
	}

	private static double[] table() {
		double[] table = new double[(int) (2 * FARTHEST * STEPS) + 1];
		for (int cell = 0; cell < table.length; cell++) {
			double x = cell / (double) STEPS - FARTHEST;
			table[cell] = StrictMath.log(SLIP + (1 - 2 * SLIP) * NormalCurve.below(x));
		}
		return table;
	}
}
