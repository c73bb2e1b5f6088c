package padwright.workup.words;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.rim.ProfileSplit;

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
		parts.add(Messages.of("profile.height", thou(split.height())));
		if (isSeen(split.tilt().fromTightToOpen())) {
			parts.add(Messages.of("profile.tilt", thou(split.tilt().fromTightToOpen()),
					oClock(split.tilt().openHours().get(0))));
		}
		if (isSeen(split.saddle().fromTightToOpen())) {
			parts.add(Messages.of("profile.saddle", thou(split.saddle().fromTightToOpen()),
					split.saddle().openHours().stream().map(ClockHour::toString)
							.reduce((some, more) -> Messages.of("words.and", some, more)).orElse("")));
		}
		if (isSeen(split.rest())) {
			parts.add(Messages.of("profile.rest", thou(split.rest())));
		}
		if (parts.size() == 1) {
			parts.add(Messages.of("profile.even"));
		}
		return String.join("; ", parts);
	}

	/** For example {@code floating could bring the spread from 1.2 thou to 0.5 thou; the rest takes film}. */
	public static String ofCure(ProfileSplit split) {
		if (!isSeen(split.spread())) {
			return Messages.of("profile.cure.nothing");
		}
		if (!isSeen(split.floatable()) || thou(split.filmOnly()).equals(thou(split.spread()))) {
			return Messages.of("profile.cure.film", thou(split.spread()));
		}
		return isSeen(split.filmOnly())
				? Messages.of("profile.cure.floatingAndFilm", thou(split.spread()), thou(split.filmOnly()))
				: Messages.of("profile.cure.floating", thou(split.spread()), thou(split.filmOnly()));
	}

	private static boolean isSeen(Length length) {
		return length.in(LengthUnit.THOU, 1).signum() != 0;
	}

	private static String thou(Length length) {
		return length.in(LengthUnit.THOU, 1).toPlainString() + " thou";
	}

	private static String oClock(ClockHour hour) {
		return hour.station() % 2 == 0 ? Messages.of("hour.full", hour)
				: Messages.of("hour.half", hour.plusHalfHours(-1));
	}
}
