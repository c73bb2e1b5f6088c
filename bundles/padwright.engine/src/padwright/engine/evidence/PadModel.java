package padwright.engine.evidence;

import padwright.engine.closing.Hinge;
import padwright.engine.length.Length;
import padwright.engine.levelling.Stiffness;

/**
 * What is known of a pad and its key before it is felt.
 *
 * @param prior of the clearance
 * @param hinge the likeliest
 * @param reachSpread standard deviation of the logarithm of its reach, 0 if it is known
 * @param stiffness the likeliest
 * @param stiffnessSpread standard deviation of the logarithm of the stiffness, 0 if it is known
 * @param feel how the hand's limit between drag and slide scatters: a leaf of thickness t drags in a gap g with
 *        probability Φ((t − g) / feel); more than zero
 */
public record PadModel(RimPrior prior, Hinge hinge, double reachSpread, Stiffness stiffness, double stiffnessSpread,
		Length feel) {

	/**
	 * Where nobody measured the arm: it may be wrong by a third either way, and a shorter one than was taken does more than
	 * a longer one, so that more is allowed for than a third.
	 */
	public static final double REACH_ASSUMED = 0.5;
	/** Where the arm was measured. */
	public static final double REACH_MEASURED = 0.05;
	/** Where a shop never calibrated its pads: it may be wrong by a third. */
	public static final double STIFFNESS_ASSUMED = 0.35;
	/** A practised hand; a bench estimate, unverified. */
	public static final Length USUAL_FEEL = Length.thou("0.1");

	/** @throws IllegalArgumentException if a spread is negative or the feel not above zero */
	public PadModel {
		if (!(reachSpread >= 0 && stiffnessSpread >= 0) || feel.signum() <= 0) {
			throw new IllegalArgumentException("a spread below nothing, or a feel that never scatters: " + reachSpread
					+ ", " + stiffnessSpread + ", " + feel);
		}
	}
}
