package padwright.workup.history;

import java.time.LocalDate;
import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.engine.rim.RimProfile;

/**
 * What the gap under a pad may have been on a day.
 *
 * @param gaps possible ones, each as likely as any other
 */
record PadGaps(LocalDate date, List<RimProfile> gaps) {

	PadGaps {
		gaps = List.copyOf(gaps);
	}

	int count() {
		return gaps.size();
	}

	/** The widest place of one of them, in nm. */
	double widest(int index) {
		return gaps.get(index % gaps.size()).stream().max().orElseThrow();
	}

	/** The mean of one of them, in nm. */
	double mean(int index) {
		return gaps.get(index % gaps.size()).stream().average().orElseThrow();
	}

	/** One of them at an hour, in nm. */
	double at(int index, ClockHour hour) {
		return gaps.get(index % gaps.size()).at(hour).nanometres();
	}
}
