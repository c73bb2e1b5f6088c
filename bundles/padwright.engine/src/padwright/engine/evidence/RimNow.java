package padwright.engine.evidence;

import padwright.engine.clock.ClockHour;

/**
 * One rim that may lie under a pad, with the film that is in place now. Stations are counted from the side of the hinge.
 *
 * @param clearance by station, in nm, at any one position of the key
 * @param weights by station, how far the face comes down there while its middle comes down by one
 * @param stiffness of the pad, in standard deviations of its logarithm from the likeliest
 * @param feel how the hand's limit scatters, in nm
 */
public record RimNow(double[] clearance, double[] weights, double stiffness, double feel) {

	/** Which of the {@link LikelyStiffness}es is nearest to the pad's. */
	public int stiffnessNode() {
		return (int) Math.rint(LikelyStiffness.place(stiffness));
	}

	/** The gap when lightly closed with so much more lift, in nm. */
	public double[] gap(double[] lift) {
		double[] gap = new double[ClockHour.STATIONS];
		double turn = Double.POSITIVE_INFINITY;
		for (int station = 0; station < gap.length; station++) {
			gap[station] = clearance[station] - lift[station];
			turn = Math.min(turn, gap[station] / weights[station]);
		}
		for (int station = 0; station < gap.length; station++) {
			gap[station] = Math.max(0, gap[station] - turn * weights[station]);
		}
		return gap;
	}
}
