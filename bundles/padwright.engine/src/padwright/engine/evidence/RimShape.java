package padwright.engine.evidence;

import padwright.engine.clock.ClockHour;
import padwright.engine.closing.Hinge;

/**
 * What follows from a state for all rounds alike: how rough the rim is, how the key turns and how the hand feels. Changes
 * with {@link #take}; for one thread.
 */
final class RimShape {

	private static final int STATIONS = RimState.STATIONS;
	/** Standard deviation of the logarithm of a hand's feel (a bench estimate, unverified). */
	private static final double FEEL_SPREAD = 0.3;
	/** Standard deviation of the logarithm of how much rougher one rim is than others (a bench estimate, unverified). */
	private static final double SCALE_SPREAD = 0.35;
	/**
	 * How much rougher than its condition says a rim is taken to be, in the middle of that: to expect true rims is to
	 * promise too much (a bench estimate, unverified).
	 */
	private static final double SCALE = 1.15;
	/** A key with a shorter arm could not be closed. */
	private static final double LONGEST_REACH = 0.95;

	private final PadModel pad;
	private final double[] cosine = new double[STATIONS];
	private final double[] weights = new double[STATIONS];
	private final double[] inverse = new double[STATIONS];
	private double feel;
	private double scale;

	RimShape(PadModel pad) {
		this.pad = pad;
		Hinge half = new Hinge(new ClockHour(0), 0.5);
		for (int station = 0; station < STATIONS; station++) {
			cosine[station] = 2 * (1 - half.weight(station));
		}
	}

	void take(double[] state) {
		double reach = Math.min(LONGEST_REACH,
				pad.hinge().reach() * StrictMath.exp(pad.reachSpread() * state[RimState.REACH]));
		for (int station = 0; station < STATIONS; station++) {
			weights[station] = 1 - reach * cosine[station];
			inverse[station] = 1 / weights[station];
		}
		feel = pad.feel().nanometres() * StrictMath.exp(FEEL_SPREAD * state[RimState.FEEL]);
		scale = SCALE * StrictMath.exp(SCALE_SPREAD * state[RimState.ROUGHNESS]);
	}

	/** In nm. */
	double feel() {
		return feel;
	}

	double scale() {
		return scale;
	}

	double[] weights() {
		return weights;
	}

	/** Turns the key until its face touches, or to so much before that, in nm. */
	void close(double[] gap, double before) {
		double turn = Double.POSITIVE_INFINITY;
		for (int station = 0; station < STATIONS; station++) {
			turn = Math.min(turn, gap[station] * inverse[station]);
		}
		turn -= before;
		for (int station = 0; station < STATIONS; station++) {
			gap[station] -= turn * weights[station];
		}
	}
}
