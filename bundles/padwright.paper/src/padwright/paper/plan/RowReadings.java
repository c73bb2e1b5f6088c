package padwright.paper.plan;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.clock.RimReading;
import padwright.engine.clock.ClockHour;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;
import padwright.workup.words.LengthWords;

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
		LengthUnit unit = Lengths.unit(round.getUnit(), round);
		List<RimReading> readings = new ArrayList<>();
		for (int index = 0; index < Math.min(hours.size(), round.getReadings().size()); index++) {
			ClockHour hour = hours.get(index);
			readings.add(LeafReading.of(round.getReadings().get(index), unit).map(reading -> reading(hour, reading))
					.orElseGet(() -> RimReading.blank(hour)));
		}
		return readings;
	}

	private static RimReading reading(ClockHour hour, LeafReading reading) {
		return reading.slides().map(leaf -> RimReading.free(hour, LengthWords.figure(leaf)))
				.orElseGet(() -> reading.lightly() ? RimReading.lightDrag(hour) : RimReading.drag(hour));
	}
}
