package padwright.workup.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.FeltReading;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.rim.FeelerSet;
import padwright.engine.rim.RimReading;
import padwright.model.Lengths;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Phrase;

/** A round of a plan as what its readings tell of the gap. */
public final class RoundReadings {

	private final KeyJob job;
	private final Round round;
	private final Consumer<Phrase> why;

	private RoundReadings(KeyJob job, Round round, Consumer<Phrase> why) {
		this.job = job;
		this.round = round;
		this.why = why;
	}

	/**
	 * The readings of a round as evidence, in its order.
	 *
	 * @param why told the reason where there is no answer
	 */
	public static Optional<List<FeltReading>> felt(KeyJob job, Round round, Consumer<Phrase> why) {
		return new RoundReadings(job, round, why).readings();
	}

	/** As {@link #felt}, but as intervals of the gap. */
	public static Optional<List<RimReading>> of(KeyJob job, Round round, Consumer<Phrase> why) {
		return felt(job, round, why).map(readings -> readings.stream()
				.map(felt -> new RimReading(felt.hour(), felt.above(), felt.below())).toList());
	}

	private Optional<List<FeltReading>> readings() {
		List<Length> leaves = job.plan().feelers();
		List<ClockHour> hours = job.hours(round);
		if (leaves.isEmpty()) {
			why.accept(Phrase.of("readings.noFeelers"));
		} else if (hours.isEmpty() || hours.size() != round.getReadings().size()) {
			why.accept(Phrase.of("readings.count", round.getReadings().size(), hours.size()));
		} else {
			return readings(hours, leaves);
		}
		return Optional.empty();
	}

	private Optional<List<FeltReading>> readings(List<ClockHour> hours, List<Length> leaves) {
		LengthUnit unit = Lengths.unit(round.getUnit(), round);
		try {
			FeelerSet feelers = new FeelerSet(leaves);
			List<FeltReading> readings = new ArrayList<>();
			for (int index = 0; index < hours.size(); index++) {
				ClockHour hour = hours.get(index);
				Optional<FeltReading> reading = LeafReading.of(round.getReadings().get(index), unit)
						.filter(said -> said.slides().filter(leaf -> !leaves.contains(leaf)).isEmpty())
						.map(said -> said.felt(hour, feelers, job.plan().plan().isGraded()));
				if (reading.isEmpty()) {
					why.accept(Phrase.of("readings.noLeaf", hour));
					return Optional.empty();
				}
				readings.add(reading.get());
			}
			return Optional.of(readings);
		} catch (IllegalArgumentException noFeelers) {
			why.accept(Phrase.of("readings.badFeelers"));
			return Optional.empty();
		}
	}
}
