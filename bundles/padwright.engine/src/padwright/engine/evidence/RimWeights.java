package padwright.engine.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Weighs possible rims by all rounds. Changes; for one thread. */
final class RimWeights {

	private final RimState layout;
	private final RimShape shape;
	private final List<RoundEvidence> rounds = new ArrayList<>();
	private final FilmUnderRim now;
	private final FilmLifts lifting;
	private final PieceSlips slips;
	private final double[] scratch = new double[RimState.STATIONS];

	RimWeights(PadModel pad, List<FeltRound> felt, FilmInPlace now) {
		lifting = new FilmLifts(pad);
		slips = new PieceSlips(pad, Stream.concat(felt.stream().map(FeltRound::film), Stream.of(now)).toList());
		layout = new RimState(pad.prior(), (int) felt.stream().filter(FeltRound::nothingDrags).count(), slips.count());
		shape = new RimShape(pad);
		this.now = film(now);
		int heldOff = RimState.HELD_OFF;
		for (FeltRound round : felt) {
			rounds.add(new RoundEvidence(round, film(round.film()), pad.hinge().side().station(),
					round.nothingDrags() ? heldOff++ : -1));
		}
	}

	private FilmUnderRim film(FilmInPlace film) {
		return new FilmUnderRim(film, lifting, slips, layout);
	}

	RimState layout() {
		return layout;
	}

	/** The logarithm of the probability of all that was felt under a rim. */
	double weigh(double[] state) {
		return weigh(state, Double.NEGATIVE_INFINITY);
	}

	/** The same, or something below {@code least} where it is below: most rims that are tried are soon seen not to do. */
	double weigh(double[] state, double least) {
		shape.take(state);
		double sum = 0;
		for (int round = rounds.size() - 1; round >= 0 && sum >= least; round--) {
			sum += rounds.get(round).weigh(state, shape, scratch, least - sum);
		}
		return sum;
	}

	/** By round and reading, how likely it is over all rims that it says nothing of the gap. */
	double[][] doubts(double[][] states) {
		double[][] doubts = rounds.stream().map(round -> new double[round.readings()]).toArray(double[][]::new);
		for (double[] state : states) {
			shape.take(state);
			for (int round = 0; round < doubts.length; round++) {
				rounds.get(round).doubt(state, shape, scratch, doubts[round]);
			}
		}
		for (double[] round : doubts) {
			Arrays.setAll(round, reading -> Math.min(1, round[reading] / states.length));
		}
		return doubts;
	}

	/** The clearance over the film that is in place now, in nm, and the weights of the hinge. */
	RimNow now(double[] state) {
		shape.take(state);
		double[] clearance = new double[RimState.STATIONS];
		now.clearance(state, shape, clearance);
		return new RimNow(clearance, shape.weights().clone(), state[RimState.STIFFNESS], shape.feel());
	}

	LikelyStiffness stiffness() {
		return lifting.stiffness();
	}

	PieceSlips slips() {
		return slips;
	}
}
