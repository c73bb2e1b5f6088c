package padwright.workup.learn;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.plan.Round;
import padwright.workup.learn.PlanFacts.FeltGap;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;

/** The gaps of one round, each in the middle between the leaf that slides and the next. */
final class FeltGaps {

	private FeltGaps() {
	}

	/** Without what the leaves of the stock cannot tell. */
	static List<FeltGap> of(KeyJob job, Round round) {
		List<FeltGap> gaps = new ArrayList<>();
		List<ClockHour> hours = job.hours(round);
		List<LeafReading> readings = LeafReading.of(round);
		List<Length> leaves = job.plan().feelers();
		if (leaves.isEmpty() || hours.size() != readings.size()) {
			return gaps;
		}
		for (int index = 0; index < hours.size(); index++) {
			int sliding = readings.get(index).slides().map(leaves::indexOf).orElse(-1);
			boolean isUnknown = readings.get(index).slides().isPresent() && sliding < 0;
			if (!isUnknown && sliding + 1 < leaves.size()) {
				double from = sliding < 0 ? 0 : thou(leaves.get(sliding));
				gaps.add(new FeltGap(hours.get(index), (from + thou(leaves.get(sliding + 1))) / 2));
			}
		}
		return gaps;
	}

	private static double thou(Length leaf) {
		return leaf.in(LengthUnit.THOU, 4).doubleValue();
	}
}
