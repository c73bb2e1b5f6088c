package padwright.workup.solve;

import java.util.List;

import padwright.engine.clock.ClockHour;

/**
 * Hours of readings between which a saddle hides. Where an even number of hours stands at even steps, a wave with half as
 * many crests is nought at all of them when it is turned by half a step: at 12, 3, 6 and 9 a saddle that is open at half past
 * 1 reads flat. Turning the hours by half a step between two rounds finds it.
 */
public final class BlindHours {

	/** More hours than that miss only what a rim hardly has. */
	private static final int MOST = 8;
	private static final int LEAST = 4;

	private BlindHours() {
	}

	/** Whether a saddle can hide between the hours: 4, 6 or 8 at even steps. */
	public static boolean are(List<ClockHour> hours) {
		long count = hours.stream().distinct().count();
		return count >= LEAST && count <= MOST && count % 2 == 0 && ClockHour.STATIONS % count == 0
				&& hours.stream().allMatch(hour -> hours.contains(hour.plusHalfHours((int) (ClockHour.STATIONS / count))));
	}

	/** Where a saddle could be open: half a step, cut to half hours, behind the first hour. */
	public static ClockHour between(List<ClockHour> hours) {
		return hours.get(0).plusHalfHours(halfStep(hours));
	}

	/** The same hours turned by half a step, cut to half hours. */
	public static List<ClockHour> turned(List<ClockHour> hours) {
		return hours.stream().map(hour -> hour.plusHalfHours(halfStep(hours))).toList();
	}

	private static int halfStep(List<ClockHour> hours) {
		return Math.max(1, ClockHour.STATIONS / (2 * hours.size()));
	}
}
