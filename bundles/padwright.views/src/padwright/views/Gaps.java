package padwright.views;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.GapBand;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.workup.words.Texts;

/** Gaps that are known within a range, in the unit that is shown, no finer than feelers tell: to about a tenth of a thou. */
public final class Gaps {

	private Gaps() {
	}

	/** The range at an hour, as in {@code 0.6 to 1.3 thou}; {@code up to 0.5 thou} where it begins at nothing. */
	public static String range(GapBand band, ClockHour hour) {
		String low = figure(band.low().at(hour));
		String high = figure(band.high().at(hour));
		return low.equals(high) ? about(band.low().at(hour))
				: isNothing(low) ? Messages.of("gap.upTo", high, Figures.unit())
						: Messages.of("gap.range", low, high, Figures.unit());
	}

	/** As in {@code about 0.6 thou}. */
	public static String about(Length gap) {
		return Messages.of("gap.about", figure(gap), Figures.unit());
	}

	private static String figure(Length gap) {
		int decimals = Shown.unit() == LengthUnit.THOU ? 1 : Shown.unit() == LengthUnit.MILLIMETRE ? 3 : 0;
		return Texts.decimal(gap.in(Shown.unit(), decimals).stripTrailingZeros().toPlainString());
	}

	private static boolean isNothing(String figure) {
		return figure.chars().noneMatch(sign -> sign >= '1' && sign <= '9');
	}
}
