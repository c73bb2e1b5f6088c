package padwright.workup.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.calibration.CalibrationRound;
import padwright.engine.film.PartialShim;
import padwright.engine.rim.RimReading;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.PlacedPieces;
import padwright.workup.solve.RoundReadings;
import padwright.workup.words.Phrase;

/**
 * Where one key was felt, pieces were placed, and it was felt again.
 *
 * @param usable    what the engine can reckon with
 * @param obstacles why the others cannot be used
 */
record RoundsWithPieces(List<CalibrationRound> usable, List<Phrase> obstacles) {

	RoundsWithPieces {
		usable = List.copyOf(usable);
		obstacles = List.copyOf(obstacles);
	}

	static RoundsWithPieces of(KeyJob job) {
		List<CalibrationRound> usable = new ArrayList<>();
		List<Phrase> obstacles = new ArrayList<>();
		List<Round> rounds = job.service().getRounds();
		for (int index = 1; index < rounds.size(); index++) {
			List<PartialShim> pieces = PlacedPieces.of(rounds.get(index - 1));
			if (!pieces.isEmpty()) {
				round(job, rounds.get(index - 1), pieces, rounds.get(index), obstacles).ifPresent(usable::add);
			}
		}
		return new RoundsWithPieces(usable, obstacles);
	}

	private static Optional<CalibrationRound> round(KeyJob job, Round before, List<PartialShim> pieces, Round after,
			List<Phrase> obstacles) {
		Optional<List<RimReading>> first = RoundReadings.of(job, before, obstacles::add);
		Optional<List<RimReading>> second = RoundReadings.of(job, after, obstacles::add);
		if (first.isEmpty() || second.isEmpty()) {
			return Optional.empty();
		}
		if (!CalibrationRound.haveAnHour(first.get(), second.get())) {
			obstacles.add(Phrase.of("stiffness.noHourTwice"));
			return Optional.empty();
		}
		return Optional.of(new CalibrationRound(first.get(), pieces, second.get()));
	}
}
