package padwright.views;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.workup.words.Texts;

/** Lengths as the views show them and the user types them. */
public final class Figures {

	private static final double NANOMETRES_PER_MILLIMETRE = LengthUnit.MILLIMETRE.nanometres();

	private Figures() {
	}

	/**
	 * In the unit that is shown, without it, with the decimal sign of the user's language; what half a thou is shows in
	 * each unit.
	 */
	public static String shown(Length length) {
		return Texts.decimal(length.in(Shown.unit(), decimals()).toPlainString()).replace('-', '\u2212');
	}

	/** As many as show what half a thou is, in the unit that is shown. */
	public static int decimals() {
		return switch (Shown.unit()) {
		case THOU -> 2;
		case MILLIMETRE -> 4;
		case MICROMETRE -> 1;
		};
	}

	/** As {@link #shown(Length)} with the unit, as in {@code 1.25 thou}. */
	public static String withUnit(Length length) {
		return shown(length) + " " + unit();
	}

	/** The unit that is shown, as it is written. */
	public static String unit() {
		return Shown.unit() == LengthUnit.MICROMETRE ? "\u00B5m" : Shown.unit().symbol();
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
		return Texts.decimal(length.in(LengthUnit.MILLIMETRE, 2).toPlainString());
	}

	/** For drawing. */
	public static double mm(Length length) {
		return length.nanometres() / NANOMETRES_PER_MILLIMETRE;
	}
}
