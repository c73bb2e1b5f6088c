package padwright.workup.words;

import java.math.BigDecimal;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.GapBand;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** Gaps that are known within a range, in tenths of a thou: feelers tell no more. */
public final class GapWords {

	private GapWords() {
	}

	/** For example {@code 1.3}. */
	public static String tenths(Length length) {
		return length.in(LengthUnit.THOU, 1).stripTrailingZeros().toPlainString();
	}

	/** The range at an hour, as in {@code 0.6 to 1.3 thou}; {@code up to 0.5 thou} where it begins at nothing. */
	public static String range(GapBand band, ClockHour hour) {
		return range(band.low().at(hour), band.high().at(hour));
	}

	/** As {@link #range(GapBand, ClockHour)}. */
	public static String range(Length low, Length high) {
		if (tenths(low).equals(tenths(high))) {
			return Messages.of("gap.about", tenths(low));
		}
		boolean isOpen = low.in(LengthUnit.THOU, 1).compareTo(BigDecimal.ZERO) > 0;
		return isOpen ? Messages.of("gap.range", tenths(low), tenths(high)) : Messages.of("gap.upTo", tenths(high));
	}
}
