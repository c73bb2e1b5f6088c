package padwright.views;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.workup.words.LengthWords;

/** Lengths as the views show them and the user types them. */
public final class Figures {

	private static final double NANOMETRES_PER_MILLIMETRE = LengthUnit.MILLIMETRE.nanometres();

	private Figures() {
	}

	/** As {@link LengthWords#figure} writes it. */
	public static String shown(Length length) {
		return LengthWords.figure(length);
	}

	/** What was typed in the unit that is shown, with a point or a comma; nothing for what can be no length. */
	public static Optional<Length> read(String typed) {
		try {
			return Optional.of(Length.of(new BigDecimal(typed.replace(',', '.')), Shown.unit()))
					.filter(length -> length.signum() >= 0 && !length.isLongerThan(Lengths.LONGEST));
		} catch (NumberFormatException | ArithmeticException noLength) {
			return Optional.empty();
		}
	}

	/** Nothing for what is not known. */
	public static String shown(Optional<Length> length) {
		return length.map(Figures::shown).orElse("");
	}

	public static String shown(List<Length> lengths) {
		return lengths.stream().map(Figures::shown).collect(Collectors.joining(" "));
	}

	/** As in {@code 17.5}. */
	public static String millimetres(Length length) {
		return LengthWords.millimetres(length, 2);
	}

	/** For drawing. */
	public static double mm(Length length) {
		return length.nanometres() / NANOMETRES_PER_MILLIMETRE;
	}
}
