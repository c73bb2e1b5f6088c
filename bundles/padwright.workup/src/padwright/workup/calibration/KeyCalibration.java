package padwright.workup.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.calibration.Calibration;
import padwright.engine.calibration.CalibrationResult;
import padwright.engine.calibration.CalibrationRound;
import padwright.engine.film.PartialShim;
import padwright.engine.rim.RimReading;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.PlacedPieces;
import padwright.workup.solve.RoundReadings;

/**
 * What the rounds of one key tell about the stiffness of its pad.
 *
 * @param rounds how many rounds with pieces and readings before and after them were used
 * @param result the stiffness, or why the readings cannot tell it
 */
public record KeyCalibration(int rounds, CalibrationResult result) {

	/** Nothing where no pieces lie between two rounds of readings. */
	public static Optional<KeyCalibration> of(KeyJob job) {
		List<CalibrationRound> usable = new ArrayList<>();
		List<String> obstacles = new ArrayList<>();
		List<Round> rounds = job.service().getRounds();
		for (int index = 1; index < rounds.size(); index++) {
			List<PartialShim> pieces = PlacedPieces.of(rounds.get(index - 1));
			if (!pieces.isEmpty()) {
				round(job, rounds.get(index - 1), pieces, rounds.get(index), obstacles).ifPresent(usable::add);
			}
		}
		if (!usable.isEmpty()) {
			return Optional.of(new KeyCalibration(usable.size(), Calibration.of(usable)));
		}
		return obstacles.stream().findFirst()
				.map(obstacle -> new KeyCalibration(0, new CalibrationResult.Undecided(obstacle)));
	}

	private static Optional<CalibrationRound> round(KeyJob job, Round before, List<PartialShim> pieces, Round after,
			List<String> obstacles) {
		Optional<List<RimReading>> first = RoundReadings.of(job, before, obstacles::add);
		Optional<List<RimReading>> second = RoundReadings.of(job, after, obstacles::add);
		if (first.isEmpty() || second.isEmpty()) {
			return Optional.empty();
		}
		try {
			return Optional.of(new CalibrationRound(first.get(), pieces, second.get()));
		} catch (IllegalArgumentException noHourTwice) {
			obstacles.add(noHourTwice.getMessage());
			return Optional.empty();
		}
	}
}
