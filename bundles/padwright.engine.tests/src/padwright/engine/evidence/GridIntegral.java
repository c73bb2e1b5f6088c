package padwright.engine.evidence;

import java.util.List;

import padwright.engine.calibration.NormalCurve;

/**
 * Means over all rims of tilt (deviation 1 thou) and saddle (0.5 thou) by plain summation over a grid of the four
 * amplitudes, a few roughnesses and a few feels; all in thou.
 */
final class GridIntegral {

	private static final double STEP = 0.3;
	private static final int STEPS = 9;
	private static final double[] THREE_POINTS = { -Math.sqrt(3), 0, Math.sqrt(3) };
	private static final double[] THREE_WEIGHTS = { 1 / 6.0, 4 / 6.0, 1 / 6.0 };

	private final List<FeltReading> readings;
	private final double reach;
	private final double[] sums = new double[24];
	private double total;
	private final double[] widest = new double[400];

	GridIntegral(List<FeltReading> readings, double reach) {
		this.readings = readings;
		this.reach = reach;
		for (int a = -STEPS; a <= STEPS; a++) {
			for (int b = -STEPS; b <= STEPS; b++) {
				for (int c = -STEPS; c <= STEPS; c++) {
					for (int d = -STEPS; d <= STEPS; d++) {
						add(new double[] { a * STEP, b * STEP, c * STEP, d * STEP });
					}
				}
			}
		}
	}

	private void add(double[] normals) {
		double prior = Math.exp(-(normals[0] * normals[0] + normals[1] * normals[1] + normals[2] * normals[2]
				+ normals[3] * normals[3]) / 2);
		for (int rough = 0; rough < 3; rough++) {
			double[] gap = gap(normals, 1.15 * Math.exp(0.35 * THREE_POINTS[rough]));
			for (int feel = 0; feel < 3; feel++) {
				add(gap, prior * THREE_WEIGHTS[rough] * THREE_WEIGHTS[feel]
						* likelihood(gap, 0.1 * Math.exp(0.3 * THREE_POINTS[feel])));
			}
		}
	}

	private void add(double[] gap, double weight) {
		double most = 0;
		for (int station = 0; station < 24; station++) {
			sums[station] += weight * gap[station];
			most = Math.max(most, gap[station]);
		}
		total += weight;
		widest[Math.min(widest.length - 1, (int) (most * 50))] += weight;
	}

	private double[] gap(double[] normals, double scale) {
		double[] gap = new double[24];
		double turn = Double.MAX_VALUE;
		for (int station = 0; station < 24; station++) {
			double angle = 2 * Math.PI * station / 24;
			gap[station] = scale * (normals[0] * Math.cos(angle) + normals[1] * Math.sin(angle)
					+ 0.5 * normals[2] * Math.cos(2 * angle) + 0.5 * normals[3] * Math.sin(2 * angle));
			turn = Math.min(turn, gap[station] / (1 - reach * Math.cos(angle)));
		}
		for (int station = 0; station < 24; station++) {
			gap[station] -= turn * (1 - reach * Math.cos(2 * Math.PI * station / 24));
		}
		return gap;
	}

	private double likelihood(double[] gap, double feel) {
		double likelihood = 1;
		for (FeltReading reading : readings) {
			int station = reading.hour().station();
			double slope = (gap[(station + 1) % 24] - gap[(station + 23) % 24]) / 6;
			double scatter = Math.hypot(feel, slope);
			if (reading.above().signum() > 0) {
				likelihood *= slip((gap[station] - reading.above().inThou()) / scatter);
			}
			if (reading.below().isPresent()) {
				likelihood *= slip((reading.below().get().inThou() - gap[station]) / scatter);
			}
		}
		return likelihood;
	}

	private static double slip(double x) {
		return 0.005 + 0.99 * NormalCurve.below(x);
	}

	/** In nm. */
	double meanGap(int station) {
		return sums[station] / total * 25_400;
	}

	/** @param width in nm */
	double chanceWithin(double width) {
		double sum = 0;
		for (int cell = 0; cell < width / 25_400 * 50; cell++) {
			sum += widest[cell];
		}
		return sum / total;
	}
}
