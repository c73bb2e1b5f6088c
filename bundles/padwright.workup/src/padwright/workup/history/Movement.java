package padwright.workup.history;

import java.time.LocalDate;
import java.util.Locale;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.rim.RimProfile;

/**
 * How the gap under one pad changed from one service to a later one, by the profiles that the readings of both tell of.
 * A model: the feeler decides.
 *
 * @param left  day on which the pad was left
 * @param found day on which it was found
 * @param mean  change of the mean gap; positive where it opened
 * @param most  the change that is greatest either way
 * @param hour  where that is
 * @param kind  in one word
 */
public record Movement(LocalDate left, LocalDate found, Length mean, Length most, ClockHour hour, Kind kind) {

	/** What became of a pad. */
	public enum Kind {
		/** No change that the finest feeler could tell. */
		HELD,
		/** Sank, so that the gap opened all in all. */
		SETTLED,
		/** Rose, so that the gap closed all in all. */
		SWELLED,
		/** Neither, but the gap changed at some hours. */
		SHIFTED
	}

	/**
	 * From profiles at both days.
	 *
	 * @param finest the finest feeler; changes below it are none
	 */
	static Movement between(LocalDate left, RimProfile before, LocalDate found, RimProfile after, Length finest) {
		int greatest = 0;
		for (int station = 1; station < ClockHour.STATIONS; station++) {
			if (Math.abs(change(before, after, station)) > Math.abs(change(before, after, greatest))) {
				greatest = station;
			}
		}
		Length mean = after.mean().minus(before.mean());
		Length most = new Length(change(before, after, greatest));
		return new Movement(left, found, mean, most, new ClockHour(greatest), kind(mean, most, finest));
	}

	private static long change(RimProfile before, RimProfile after, int station) {
		return after.nanometresAt(station) - before.nanometresAt(station);
	}

	private static Kind kind(Length mean, Length most, Length finest) {
		if (finest.isLongerThan(most.abs())) {
			return Kind.HELD;
		}
		if (finest.isLongerThan(mean.abs())) {
			return Kind.SHIFTED;
		}
		return mean.signum() > 0 ? Kind.SETTLED : Kind.SWELLED;
	}

	/** For example {@code settled by 0.8 thou, most at 3}. */
	public String words() {
		return switch (kind) {
		case HELD -> "held";
		case SHIFTED -> (most.signum() > 0 ? "opened by " : "closed by ") + thou(most) + " at " + hour;
		default -> kind.name().toLowerCase(Locale.ROOT) + " by " + thou(mean) + ", most at " + hour;
		};
	}

	private static String thou(Length length) {
		return length.abs().in(LengthUnit.THOU, 1).toPlainString() + " thou";
	}
}
