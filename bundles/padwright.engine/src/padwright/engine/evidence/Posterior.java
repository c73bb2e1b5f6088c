package padwright.engine.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.engine.closing.Hinge;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/**
 * What is known of a pad, its rim, its key and the hand that felt it, after all rounds: a sample of possible rims, each
 * as likely as any other. The same on every machine.
 */
public final class Posterior {

	/** Enough for chances to within about two points in a hundred. */
	private static final int RIMS = 1024;
	private static final long SEED = 0x5EA7L;

	/** From here on a reading is more likely wrong than right. */
	private static final double DOUBTED = 0.5;

	private final List<RimNow> rims;
	private final List<DoubtedReading> doubted;
	private final RimWeights weights;
	private final Hinge hinge;

	private Posterior(RimWeights weights, List<FeltRound> rounds, Hinge hinge) {
		this.weights = weights;
		this.hinge = hinge;
		double[][] states = new RimSampler(weights, RIMS, SEED).sample();
		rims = Arrays.stream(states).map(weights::now).toList();
		doubted = doubted(weights.doubts(states), rounds);
	}

	private static List<DoubtedReading> doubted(double[][] doubts, List<FeltRound> rounds) {
		List<DoubtedReading> doubted = new ArrayList<>();
		for (int round = 0; round < doubts.length; round++) {
			for (int reading = 0; reading < doubts[round].length; reading++) {
				if (doubts[round][reading] > DOUBTED) {
					doubted.add(new DoubtedReading(round, rounds.get(round).readings().get(reading),
							doubts[round][reading]));
				}
			}
		}
		return List.copyOf(doubted);
	}

	/**
	 * The posterior of all rounds.
	 *
	 * @param rounds from the first since the pad was fitted; without any, what is known before it is felt
	 * @param now the film that is in place now
	 */
	public static Posterior of(PadModel pad, List<FeltRound> rounds, FilmInPlace now) {
		return new Posterior(new RimWeights(pad, rounds, now), rounds, pad.hinge());
	}

	/** Possible rims, in no order. */
	public List<RimNow> rims() {
		return rims;
	}

	/** Where the gap lies now. */
	public GapBand band() {
		double[] nothing = new double[ClockHour.STATIONS];
		return GapBand.of(rims.stream().map(rim -> rim.gap(nothing)).toList(), hinge.side());
	}

	/** The probability that the gap is nowhere wider now, 0 to 1. */
	public double chanceWithin(Length width) {
		double[] nothing = new double[ClockHour.STATIONS];
		long within = rims.stream()
				.filter(rim -> Arrays.stream(rim.gap(nothing)).allMatch(gap -> gap <= width.nanometres())).count();
		return within / (double) rims.size();
	}

	/** Readings that are more likely wrong than right: to be felt again. */
	public List<DoubtedReading> doubted() {
		return doubted;
	}

	/** The stiffnesses that {@link RimNow#stiffnessNode} tells of. */
	public LikelyStiffness stiffness() {
		return weights.stiffness();
	}

	/**
	 * By how much the lift of a piece changes when it is placed one standard deviation of the hand earlier on the clock, in
	 * nm, at the stations counted from the side of the hinge.
	 */
	public double[] slip(PartialShim piece) {
		return weights.slips().slip(piece);
	}
}
