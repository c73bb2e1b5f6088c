package padwright.workup.calibration;

import java.util.Optional;

import padwright.engine.calibration.Calibration;
import padwright.engine.calibration.CalibrationResult;
import padwright.workup.service.KeyJob;

/**
 * What the rounds of one key tell about the stiffness of its pad.
 *
 * @param rounds how many rounds with pieces and readings before and after them were used
 * @param result the stiffness, or why the readings cannot tell it
 */
public record KeyCalibration(int rounds, CalibrationResult result) {

	/** Nothing where no pieces lie between two rounds of readings. */
	public static Optional<KeyCalibration> of(KeyJob job) {
		RoundsWithPieces rounds = RoundsWithPieces.of(job);
		if (!rounds.usable().isEmpty()) {
			return Optional.of(new KeyCalibration(rounds.usable().size(), Calibration.of(rounds.usable())));
		}
		return rounds.obstacles().stream().findFirst()
				.map(obstacle -> new KeyCalibration(0, new CalibrationResult.Undecided(obstacle)));
	}
}
