package padwright.engine.closing;

import padwright.engine.clock.ClockHour;
import padwright.engine.rim.RimProfile;

/** What stays open of a clearance once the key is lightly closed. */
public final class ClosedGap {

	private ClosedGap() {
	}

	/**
	 * The gap g = f − φ·w with φ = min f/w: never negative, zero where the face touches first; rounded to the nanometre.
	 *
	 * @param clearance f, from face to rim at any one position of the key; may be negative
	 */
	public static RimProfile of(RimProfile clearance, Hinge hinge) {
		double turn = Double.POSITIVE_INFINITY;
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			turn = Math.min(turn, clearance.nanometresAt(station) / hinge.weight(station));
		}
		long[] gap = new long[ClockHour.STATIONS];
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			gap[station] = Math.max(0, Math.round(clearance.nanometresAt(station) - turn * hinge.weight(station)));
		}
		return RimProfile.ofNanometres(gap);
	}
}
