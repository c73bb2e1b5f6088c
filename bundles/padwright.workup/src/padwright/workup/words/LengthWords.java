package padwright.workup.words;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

import java.math.BigDecimal;

/**
 * Lengths for people, in the unit that is shown and with the decimal sign of the language. No screen or page writes a
 * length for people in any other way; what goes into a text keeps the point of the grammar.
 */
public final class LengthWords {

	/** Of a thou: as many as a document is likely to write. */
	private static final int EXACT = 4;
	/** A hundredth of a thou, and a tenth of one, in nanometres. */
	private static final long SHOWN = LengthUnit.THOU.nanometres() / 100;
	private static final long ROUGH = LengthUnit.THOU.nanometres() / 10;

	private LengthWords() {
	}

	/** Without the unit, as fine as film and leaves are sold: what half a thou is shows in each unit. */
	public static String figure(Length length) {
		return written(length, decimals());
	}

	/** The length that {@link #figure(Length)} shows, so that what is summed up from shown figures adds up. */
	public static Length rounded(Length length) {
		return Length.of(length.in(ShownUnit.now(), decimals()), ShownUnit.now());
	}

	/** As {@link #figure(Length)} with the unit, as in {@code 1.25 thou}. */
	public static String withUnit(Length length) {
		return figure(length) + " " + ShownUnit.symbol();
	}

	/** As it was measured or is sold, with the unit, as in {@code 0.125 thou}; not for what was reckoned. */
	public static String exact(Length length) {
		return written(length, ShownUnit.now() == LengthUnit.THOU ? EXACT : decimals()) + " " + ShownUnit.symbol();
	}

	/** As many decimals as show what half a thou is, in the unit that is shown. */
	public static int decimals() {
		return decimals(SHOWN);
	}

	/** Without the unit, to about a tenth of a thou: what feelers, and sums of parts with a tolerance, tell. */
	public static String rough(Length length) {
		return written(length, roughDecimals());
	}

	private static int roughDecimals() {
		return decimals(ROUGH);
	}

	/** The fewest that show steps no wider than {@code step}, in the unit that is shown. */
	private static int decimals(long step) {
		int decimals = 0;
		for (long shown = ShownUnit.now().nanometres(); shown > step; shown /= 10) {
			decimals++;
		}
		return decimals;
	}

	/** The length that {@link #rough(Length)} shows. */
	public static Length roughly(Length length) {
		return Length.of(length.in(ShownUnit.now(), roughDecimals()), ShownUnit.now());
	}

	/** From one length that {@link #rough(Length)} shows to the next. */
	static Length roughStep() {
		return Length.of(BigDecimal.ONE.movePointLeft(roughDecimals()), ShownUnit.now());
	}

	/** As {@link #rough(Length)} with the unit. */
	public static String roughWithUnit(Length length) {
		return rough(length) + " " + ShownUnit.symbol();
	}

	/** In mm to {@code decimals} places without the unit, as in {@code 17.5}: sizes of keys, holes and threads. */
	public static String millimetres(Length length, int decimals) {
		return plain(length, LengthUnit.MILLIMETRE, decimals);
	}

	private static String written(Length length, int decimals) {
		return plain(length, ShownUnit.now(), decimals);
	}

	private static String plain(Length length, LengthUnit unit, int decimals) {
		return Texts.decimal(length.in(unit, decimals).toPlainString()).replace('-', '\u2212');
	}
}
