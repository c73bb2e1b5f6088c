package padwright.engine.rim;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** A profile's parts in the words of the bench, in thou to one decimal; tilt and saddle from tight to open. */
public final class ProfileWords {

	private ProfileWords() {
	}

	/**
	 * For example {@code height 1.2 thou; tilt of 0.8 thou, open toward 4 o'clock: floating could cure it; saddle of
	 * 0.5 thou, open at 1 and 7: film only, floating cannot cure it}. Parts that round to nothing are left out.
	 */
	public static String of(ProfileSplit split) {
		List<String> parts = new ArrayList<>();
		parts.add("height " + thou(split.height()));
		if (isSeen(split.tilt().fromTightToOpen())) {
			parts.add("tilt of " + thou(split.tilt().fromTightToOpen()) + ", open toward "
					+ oClock(split.tilt().openHours().get(0)) + ": floating could cure it");
		}
		if (isSeen(split.saddle().fromTightToOpen())) {
			parts.add("saddle of " + thou(split.saddle().fromTightToOpen()) + ", open at "
					+ split.saddle().openHours().stream().map(ClockHour::toString).collect(Collectors.joining(" and "))
					+ ": film only, floating cannot cure it");
		}
		if (isSeen(split.rest())) {
			parts.add("rest of " + thou(split.rest()) + ": film only");
		}
		if (parts.size() == 1) {
			parts.add("even all around");
		}
		return String.join("; ", parts);
	}

	/** For example {@code floating could bring the spread from 1.2 thou to 0.5 thou; the rest takes film}. */
	public static String ofCure(ProfileSplit split) {
		if (!isSeen(split.spread())) {
			return "nothing to cure";
		}
		if (!isSeen(split.floatable()) || thou(split.filmOnly()).equals(thou(split.spread()))) {
			return "floating cannot cure any of the spread of " + thou(split.spread()) + "; it takes film";
		}
		return "floating could bring the spread from " + thou(split.spread()) + " to " + thou(split.filmOnly())
				+ (isSeen(split.filmOnly()) ? "; the rest takes film" : "");
	}

	private static boolean isSeen(Length length) {
		return length.in(LengthUnit.THOU, 1).signum() != 0;
	}

	private static String thou(Length length) {
		return length.in(LengthUnit.THOU, 1).toPlainString() + " thou";
	}

	private static String oClock(ClockHour hour) {
		return hour.station() % 2 == 0 ? hour + " o'clock" : "half past " + hour.plusHalfHours(-1);
	}
}
