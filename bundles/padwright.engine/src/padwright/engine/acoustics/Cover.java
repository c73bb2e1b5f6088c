package padwright.engine.acoustics;

import java.util.List;
import java.util.stream.IntStream;

import padwright.engine.clock.ClockHour;
import padwright.engine.rim.RimProfile;

/** How a hole is covered in a fingering. */
public sealed interface Cover {

	/** As far open as it goes: under its raised pad if it has one. */
	Cover OPEN = new Free();

	/** By pad or finger, a perforated pad by both. */
	Cover CLOSED = new Shut();

	/** See {@link Cover#OPEN}. */
	record Free() implements Cover {
	}

	/** See {@link Cover#CLOSED}. */
	record Shut() implements Cover {
	}

	/**
	 * Open, with the pad not as far up as it goes, or farther. Of a hole without a cup it is as open as ever.
	 *
	 * @param rise of the pad over the rim in m, more than 0
	 */
	record Risen(double rise) implements Cover {

		/** @throws IllegalArgumentException if the rise is not above 0 */
		public Risen {
			Sizes.requirePositive("rise of a pad", rise);
		}
	}

	/**
	 * By a finger in part, where the pad, if there is one, is perforated and down.
	 *
	 * @param share of the area under the finger: 0 for a pad that is down with no finger on it, to 0.99
	 */
	record Partly(double share) implements Cover {

		/** @throws IllegalArgumentException if the share is out of range */
		public Partly {
			Sizes.requireBetween("share of a hole under a finger", share, 0, 0.99);
		}
	}

	/**
	 * Closed, but for a gap around the rim.
	 *
	 * @param gaps in m at the 24 half hours of the clock, or at other places equally far apart; 0 or less is shut
	 */
	record Leaking(List<Double> gaps) implements Cover {

		/** @throws IllegalArgumentException if there is no gap, or one is out of range */
		public Leaking {
			gaps = new Leak.Rim(1, 1, gaps).gaps();
		}

		public static Leaking of(RimProfile gap) {
			return new Leaking(IntStream.range(0, ClockHour.STATIONS)
					.mapToObj(station -> Sizes.metres(gap.at(new ClockHour(station)))).toList());
		}
	}
}
