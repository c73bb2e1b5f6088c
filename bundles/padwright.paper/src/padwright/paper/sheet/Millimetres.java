package padwright.paper.sheet;

import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.workup.words.LengthWords;

/** Lengths as a layout sheet gives them: in mm to three decimals, without the unit. */
final class Millimetres {

	private Millimetres() {
	}

	static String of(Length length) {
		return LengthWords.millimetres(length, 3);
	}

	/** Nothing for what is not said. */
	static String of(Optional<Length> length) {
		return length.map(Millimetres::of).orElse("");
	}

	/** For drawing. */
	static double value(Length length) {
		return length.nanometres() / (double) LengthUnit.MILLIMETRE.nanometres();
	}
}
