package padwright.views;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** Lengths as the views show them: in thou, to two decimals, without the unit. */
public final class Figures {

	private static final double NANOMETRES_PER_MILLIMETRE = LengthUnit.MILLIMETRE.nanometres();

	private Figures() {
	}

	public static String thou(Length length) {
		return length.in(LengthUnit.THOU, 2).toPlainString().replace('-', '\u2212');
	}

	/** Nothing for what is not known. */
	public static String thou(Optional<Length> length) {
		return length.map(Figures::thou).orElse("");
	}

	public static String thou(List<Length> lengths) {
		return lengths.stream().map(Figures::thou).collect(Collectors.joining(" "));
	}

	/** As in {@code 17.5}. */
	public static String millimetres(Length length) {
		return length.in(LengthUnit.MILLIMETRE, 2).toPlainString();
	}

	/** For drawing. */
	public static double mm(Length length) {
		return length.nanometres() / NANOMETRES_PER_MILLIMETRE;
	}
}
