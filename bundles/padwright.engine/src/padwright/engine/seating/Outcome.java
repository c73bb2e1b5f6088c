package padwright.engine.seating;

import java.util.List;
import java.util.stream.DoubleStream;

import padwright.engine.evidence.LikelyStiffness;
import padwright.engine.evidence.Posterior;
import padwright.engine.evidence.RandomStream;
import padwright.engine.evidence.RimNow;

/**
 * What becomes of rims that had no say in the choice once actions are done by a hand that places pieces a little off:
 * told by others than those it was chosen by, a chance is not made better than it is by having been chosen.
 */
final class Outcome {

	private static final long SEED = 0x0DDL;
	/** How far pieces are placed from where they should lie, in deviations of the hand. */
	private static final double[] HAND = hand(4096);

	private final Posterior posterior;
	private final PossibleRims rims;
	private final ActionTable actions;

	Outcome(Posterior posterior, PossibleRims rims, ActionTable actions) {
		this.posterior = posterior;
		this.rims = rims;
		this.actions = actions;
	}

	/** The gaps by rim and station, counted from the side of the hinge, in nm. */
	double[][] gaps(int... ids) {
		int placed = 0;
		List<double[]> slips = actions.slips(posterior, ids);
		double[][] lifts = actions.lifts(ids);
		double[][] gaps = new double[rims.count()][];
		for (int rim = 0; rim < gaps.length; rim++) {
			RimNow now = rims.rim(rim);
			double[] lift = new double[PossibleRims.STATIONS];
			LikelyStiffness.between(lifts, now.stiffness(), lift);
			for (double[] slip : slips) {
				add(lift, slip, HAND[placed++ % HAND.length]);
			}
			gaps[rim] = now.gap(lift);
		}
		return gaps;
	}

	private static double[] hand(int count) {
		RandomStream hand = new RandomStream(SEED);
		return DoubleStream.generate(hand::normal).limit(count).toArray();
	}

	private static void add(double[] lift, double[] slip, double deviations) {
		for (int station = 0; station < lift.length; station++) {
			lift[station] += deviations * slip[station];
		}
	}

	/** The share of gaps that are nowhere wider. */
	static double within(double[][] gaps, double width) {
		int level = 0;
		for (double[] gap : gaps) {
			level += widest(gap) <= width ? 1 : 0;
		}
		return level / (double) gaps.length;
	}

	/** The mean over all gaps of one where they are nowhere wider than {@code full}, falling to zero at {@code none}. */
	static double closeness(double[][] gaps, double full, double none) {
		double sum = 0;
		for (double[] gap : gaps) {
			sum += Math.max(0, Math.min(1, (none - widest(gap)) / (none - full)));
		}
		return sum / gaps.length;
	}

	private static double widest(double[] gap) {
		double widest = 0;
		for (double open : gap) {
			widest = Math.max(widest, open);
		}
		return widest;
	}
}
