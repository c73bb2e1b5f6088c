package padwright.workup.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.rim.FeelerSet;
import padwright.engine.rim.RimReading;
import padwright.model.FeelerReading;
import padwright.model.Lengths;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Messages;

/** A round of a plan as the intervals that its readings tell of. */
public final class RoundReadings {

	private final KeyJob job;
	private final Round round;
	private final Consumer<String> why;

	private RoundReadings(KeyJob job, Round round, Consumer<String> why) {
		this.job = job;
		this.round = round;
		this.why = why;
	}

	/**
	 * The readings of a round, in its order.
	 *
	 * @param why told the reason where there is no answer
	 */
	public static Optional<List<RimReading>> of(KeyJob job, Round round, Consumer<String> why) {
		return new RoundReadings(job, round, why).readings();
	}

	private Optional<List<RimReading>> readings() {
		List<Length> leaves = job.plan().feelers();
		List<ClockHour> hours = job.hours(round);
		if (leaves.isEmpty()) {
			why.accept(Messages.of("readings.noFeelers"));
		} else if (hours.isEmpty() || hours.size() != round.getReadings().size()) {
			why.accept(Messages.of("readings.count", round.getReadings().size(), hours.size()));
		} else {
			return readings(hours, new FeelerSet(leaves));
		}
		return Optional.empty();
	}

	private Optional<List<RimReading>> readings(List<ClockHour> hours, FeelerSet feelers) {
		LengthUnit unit = Lengths.unit(round.getUnit(), round);
		List<RimReading> readings = new ArrayList<>();
		for (int index = 0; index < hours.size(); index++) {
			Optional<RimReading> reading = reading(hours.get(index), round.getReadings().get(index), unit, feelers);
			if (reading.isEmpty()) {
				why.accept(Messages.of("readings.noLeaf", hours.get(index)));
				return Optional.empty();
			}
			readings.add(reading.get());
		}
		return Optional.of(readings);
	}

	private static Optional<RimReading> reading(ClockHour hour, FeelerReading reading, LengthUnit unit,
			FeelerSet feelers) {
		if (reading.free().isEmpty()) {
			return Optional.of(feelers.drags(hour));
		}
		return Lengths.exact(reading.free().get(), unit).filter(feelers.leaves()::contains)
				.map(leaf -> feelers.free(hour, leaf));
	}
}
