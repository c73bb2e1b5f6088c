package padwright.engine.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationResult.ReadingError;
import padwright.engine.calibration.CalibrationResult.Reason;
import padwright.engine.calibration.CalibrationResult.Undecided;
import padwright.engine.length.Length;
import padwright.engine.levelling.Stiffness;

/**
 * Finds the stiffness of a kind of pad from rounds of readings. A model: the feeler decides.
 *
 * <p>At each hour read both before and after, the readings' intervals bound the lift. If some stiffness from 0 to 1
 * agrees with all bounds, the answer is the range of those that do. If none does, each lift is taken to be the
 * model's plus a normal error with a common offset, known only as an interval, and the answer is the likeliest
 * stiffness with the range in which twice the logarithm of the likelihood, at the likeliest offset and deviation, is
 * within 3.84 of its maximum (95 %). Should the agreeing stiffnesses lie apart, the range spans them.
 *
 * <p>Widths are judged on an even scale on which 0 to 1 is 1: log(1 + 1000 λ) / log(1001).
 */
public final class Calibration {

	/** Half of the 95 % point of the chi-square distribution with one degree of freedom. */
	private static final double LIKELIHOOD_DROP = 1.920729;
	private static final double WIDEST_RANGE = 0.5;
	/** Far below what any feeler tells, in nm. */
	private static final double LEAST_TELLING_LIFT = 1_000;
	/** What rounding of modelled lifts to the nanometre may add for each reading. */
	private static final double ROUNDING = 2;

	private final List<LiftReadings> rounds;

	private Calibration(List<CalibrationRound> rounds) {
		this.rounds = rounds.stream().map(LiftReadings::of).toList();
	}

	/**
	 * The stiffness that the rounds tell, or why they do not.
	 *
	 * @param rounds all with the same kind of pad
	 * @throws IllegalArgumentException if there are none
	 */
	public static CalibrationResult of(List<CalibrationRound> rounds) {
		if (rounds.isEmpty()) {
			throw new IllegalArgumentException("no round to calibrate from");
		}
		return new Calibration(rounds).result();
	}

	private CalibrationResult result() {
		if (mostTellingLift() < LEAST_TELLING_LIFT) {
			return new Undecided(Reason.ALIKE, StiffnessScale.at(0), StiffnessScale.at(1));
		}
		double rounding = ROUNDING * rounds.stream().mapToInt(round -> round.bounds().size()).sum();
		StiffnessScale.Range agreeing = StiffnessScale.search(stiffness -> -violation(stiffness), rounding);
		if (violation(StiffnessScale.at(agreeing.best())) <= rounding) {
			return judged(agreeing, agreeing.middle(), Optional.empty());
		}
		return likeliest();
	}

	/** By how much the lift at any hour read depends on the stiffness, at most, in nm. */
	private double mostTellingLift() {
		double[] least = modelled(StiffnessScale.at(0));
		double[] greatest = least.clone();
		for (double mark = 0; mark <= 1; mark += 1.0 / 16) {
			double[] lifts = modelled(StiffnessScale.at(mark));
			Arrays.setAll(least, i -> Math.min(least[i], lifts[i]));
			Arrays.setAll(greatest, i -> Math.max(greatest[i], lifts[i]));
		}
		return IntStream.range(0, least.length).mapToDouble(i -> greatest[i] - least[i]).max().getAsDouble();
	}

	private double[] modelled(Stiffness stiffness) {
		return rounds.stream().flatMapToDouble(round -> round.modelled(stiffness)).toArray();
	}

	private double violation(Stiffness stiffness) {
		return rounds.stream().flatMap(round -> round.errors(stiffness)).mapToDouble(error -> error.distanceFrom(0))
				.sum();
	}

	private CalibrationResult likeliest() {
		StiffnessScale.Range range = StiffnessScale.search(stiffness -> errors(stiffness).logLikelihood(),
				LIKELIHOOD_DROP);
		Stiffness best = StiffnessScale.at(range.best());
		CensoredNormal errors = errors(best);
		double greatestLift = Arrays.stream(modelled(best)).max().getAsDouble();
		if (Math.abs(errors.mean()) + errors.deviation() > greatestLift / 2) {
			return new Undecided(Reason.TOO_FAR_OFF, StiffnessScale.at(0), StiffnessScale.at(1));
		}
		return judged(range, range.best(),
				Optional.of(new ReadingError(rounded(errors.mean()), rounded(errors.deviation()))));
	}

	private CensoredNormal errors(Stiffness stiffness) {
		return CensoredNormal.fit(rounds.stream().flatMap(round -> round.errors(stiffness)).toList());
	}

	private static CalibrationResult judged(StiffnessScale.Range range, double best, Optional<ReadingError> error) {
		Stiffness low = StiffnessScale.at(range.low());
		Stiffness high = StiffnessScale.at(range.high());
		if (range.width() > WIDEST_RANGE) {
			return new Undecided(Reason.TOO_WIDE, low, high);
		}
		return new Calibrated(StiffnessScale.at(best), low, high, error);
	}

	private static Length rounded(double nanometres) {
		return new Length(Math.round(nanometres));
	}
}
