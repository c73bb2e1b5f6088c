package padwright.engine.calibration;

import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.levelling.Stiffness;

/** What rounds of readings tell about a stiffness. */
public sealed interface CalibrationResult {

	/**
	 * A stiffness, with the range that the readings allow.
	 *
	 * @param best if all readings agree the middle of the range (on the scale described at {@link Calibration}), else
	 *            the likeliest
	 * @param atLeast the lower end of the range
	 * @param atMost the upper end of the range
	 * @param error empty if some stiffness agrees with every reading; then the range holds all that do. Otherwise how
	 *            far readings are off, and the range is the likelihood's of 95 %
	 */
	record Calibrated(Stiffness best, Stiffness atLeast, Stiffness atMost, Optional<ReadingError> error)
			implements CalibrationResult {
	}

	/**
	 * The readings cannot tell.
	 *
	 * @param why what is missing or wrong
	 * @param atLeast the lower end of the range that goes with the readings
	 * @param atMost the upper end
	 */
	record Undecided(Reason why, Stiffness atLeast, Stiffness atMost) implements CalibrationResult {
	}

	/** Why readings cannot tell a stiffness. */
	enum Reason {
		/** The pieces lift the face alike at the hours read, whatever the stiffness. */
		ALIKE,
		/** The readings before and after differ too much from what the pieces can do at any stiffness. */
		TOO_FAR_OFF,
		/** A wide range of stiffness goes with the readings. */
		TOO_WIDE
	}

	/**
	 * How changes of the gap differ from what the pieces should have done.
	 *
	 * @param offset common to all, as when the pad seats a little higher or lower; positive where the gap closed more
	 * @param deviation standard deviation about it
	 */
	record ReadingError(Length offset, Length deviation) {
	}
}
