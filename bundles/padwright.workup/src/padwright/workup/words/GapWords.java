package padwright.workup.words;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.GapBand;
import padwright.engine.length.Length;

/** Gaps that are known within a range, to about a tenth of a thou: feelers tell no more. */
public final class GapWords {

	private GapWords() {
	}

	/** The range at an hour, as in {@code 0.6 to 1.3 thou}; {@code up to 0.5 thou} where it begins at nothing. */
	public static String range(GapBand band, ClockHour hour) {
		return range(band.low().at(hour), band.high().at(hour));
	}

	/** As {@link #range(GapBand, ClockHour)}. */
	public static String range(Length low, Length high) {
		String from = LengthWords.rough(low);
		String to = LengthWords.rough(high);
		if (from.equals(to)) {
			return about(low);
		}
		return isNothing(from) ? Messages.of("gap.upTo", to, ShownUnit.symbol())
				: Messages.of("gap.range", from, to, ShownUnit.symbol());
	}

	/** As in {@code about 0.6 thou}. */
	public static String about(Length gap) {
		return Messages.of("gap.about", LengthWords.rough(gap), ShownUnit.symbol());
	}

	private static boolean isNothing(String figure) {
		return figure.chars().noneMatch(sign -> sign >= '1' && sign <= '9');
	}
}
