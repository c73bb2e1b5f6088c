package padwright.paper.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.drawing.clock.RimReading;
import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.model.FeelerReading;
import padwright.model.Lengths;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;

/** The readings of a row as a clock shows them. */
public final class RowReadings {

	private RowReadings() {
	}

	/** Those of the last round; where the row has none, a blank for each hour of the plan. */
	public static List<RimReading> of(KeyJob job) {
		return job.lastRound().map(round -> of(job, round))
				.orElseGet(() -> job.plan().plan().getHours().stream().map(RimReading::blank).toList());
	}

	private static List<RimReading> of(KeyJob job, Round round) {
		List<ClockHour> hours = job.hours(round);
		List<RimReading> readings = new ArrayList<>();
		for (int index = 0; index < Math.min(hours.size(), round.getReadings().size()); index++) {
			readings.add(reading(hours.get(index), round.getReadings().get(index), round));
		}
		return readings;
	}

	private static RimReading reading(ClockHour hour, FeelerReading reading, Round round) {
		Optional<Length> leaf = reading.free()
				.flatMap((BigDecimal free) -> Lengths.exact(free, Lengths.unit(round.getUnit(), round)));
		return leaf.map(free -> RimReading.free(hour, PlanBenchCard.thou(free))).orElseGet(() -> RimReading.drag(hour));
	}
}
