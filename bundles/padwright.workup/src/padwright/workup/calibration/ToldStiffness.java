package padwright.workup.calibration;

import java.util.Optional;

import padwright.engine.calibration.CalibrationResult;
import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationResult.Undecided;
import padwright.workup.words.Phrase;
import padwright.workup.words.TwoDigits;

/**
 * A stiffness from rounds of readings, or why there is none.
 *
 * @param told empty where the rounds cannot tell it
 * @param why what is missing or wrong then
 */
public record ToldStiffness(Optional<Calibrated> told, Phrase why) {

	private static final Phrase NOTHING = Phrase.plain("");

	static ToldStiffness of(CalibrationResult result) {
		return result instanceof Calibrated told ? new ToldStiffness(Optional.of(told), NOTHING)
				: not(why((Undecided) result));
	}

	/** Where no round can be used. */
	static ToldStiffness not(Phrase why) {
		return new ToldStiffness(Optional.empty(), why);
	}

	private static Phrase why(Undecided undecided) {
		return switch (undecided.why()) {
		case ALIKE -> Phrase.of("stiffness.alike");
		case TOO_FAR_OFF -> Phrase.of("stiffness.tooFarOff");
		case TOO_WIDE -> Phrase.of("stiffness.tooWide", new TwoDigits(undecided.atLeast().lambda()),
				new TwoDigits(undecided.atMost().lambda()));
		};
	}
}
