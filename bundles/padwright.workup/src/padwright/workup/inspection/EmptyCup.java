package padwright.workup.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.ProfileSplit;
import padwright.engine.rim.RimFit;
import padwright.engine.rim.RimReading;
import padwright.workup.service.KeyJob;

/** The gap around an empty cup, split into what it is made of. */
public final class EmptyCup {

	/** How far from even a gap may be, from tight to open; an assumption of ours, no source. */
	public static final Length MOST_UNEVEN = Length.thou("1.5");

	/** Fewer hours tell no tilt. */
	private static final int LEAST_HOURS = 3;

	private EmptyCup() {
	}

	/**
	 * Height, tilt and saddle of the gap from cup lip to rim; nothing where it was not measured at three hours or more,
	 * or its readings make no sense.
	 */
	public static Optional<ProfileSplit> split(KeyJob job) {
		List<Length> gaps = job.emptyGaps();
		List<ClockHour> hours = job.plan().plan().getHours();
		if (gaps.size() != hours.size() || hours.stream().distinct().count() < LEAST_HOURS) {
			return Optional.empty();
		}
		try {
			List<RimReading> readings = new ArrayList<>();
			for (int index = 0; index < gaps.size(); index++) {
				readings.add(RimReading.point(hours.get(index), gaps.get(index)));
			}
			return Optional.of(ProfileSplit.of(RimFit.fit(readings).profile()));
		} catch (IllegalArgumentException noGap) {
			return Optional.empty();
		}
	}
}
