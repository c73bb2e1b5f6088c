package padwright.engine.evidence;

import padwright.engine.levelling.Stiffness;

/**
 * The stiffnesses that a pad may have, a few of them spread evenly over the logarithm; lifts are worked out for these
 * and are linear between.
 */
public final class LikelyStiffness {

	/** In standard deviations of the logarithm. */
	private static final double FARTHEST = 3.2;
	private static final int STEPS = 8;
	/** How many there are. */
	public static final int NODES = STEPS + 1;

	private final Stiffness[] nodes = new Stiffness[NODES];

	LikelyStiffness(PadModel pad) {
		for (int node = 0; node < NODES; node++) {
			double deviations = FARTHEST * (2.0 * node / STEPS - 1);
			double lambda = pad.stiffness().lambda() * StrictMath.exp(pad.stiffnessSpread() * deviations);
			nodes[node] = new Stiffness(Math.min(1, lambda));
		}
	}

	/** @param node 0 to one below {@link #NODES} */
	public Stiffness at(int node) {
		return nodes[node];
	}

	/** Where among the nodes a stiffness stands that is so many deviations off, from 0 to the last. */
	static double place(double deviations) {
		return Math.max(0, Math.min((deviations + FARTHEST) / (2 * FARTHEST) * STEPS, STEPS));
	}

	/** The lift at all stations for a stiffness that lies between two nodes, into {@code lift}. */
	public static void between(double[][] lifts, double deviations, double[] lift) {
		double place = place(deviations);
		int node = Math.min((int) place, STEPS - 1);
		double part = place - node;
		for (int station = 0; station < lift.length; station++) {
			lift[station] = lifts[node][station] + part * (lifts[node + 1][station] - lifts[node][station]);
		}
	}
}
