package padwright.workup.calibration;

import java.util.Optional;

import padwright.engine.calibration.Calibration;
import padwright.workup.service.KeyJob;

/**
 * What the rounds of one key tell about the stiffness of its pad.
 *
 * @param rounds how many rounds with pieces and readings before and after them were used
 * @param stiffness the stiffness, or why the readings cannot tell it
 */
public record KeyCalibration(int rounds, ToldStiffness stiffness) {

	/** Nothing where no pieces lie between two rounds of readings. */
	public static Optional<KeyCalibration> of(KeyJob job) {
		RoundsWithPieces rounds = RoundsWithPieces.of(job);
		if (!rounds.usable().isEmpty()) {
			return Optional.of(new KeyCalibration(rounds.usable().size(), ToldStiffness.of(Calibration.of(rounds.usable()))));
		}
		return rounds.obstacles().stream().findFirst()
				.map(obstacle -> new KeyCalibration(0, ToldStiffness.not(obstacle)));
	}
}
