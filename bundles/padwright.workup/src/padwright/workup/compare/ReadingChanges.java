package padwright.workup.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.model.FeelerReading;
import padwright.model.Lengths;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;

/** What the feelers said at each hour, then and now; thicknesses in thou. */
final class ReadingChanges {

	private final Map<ClockHour, String> then;
	private final Map<ClockHour, String> now;

	private ReadingChanges(Map<ClockHour, String> then, Map<ClockHour, String> now) {
		this.then = then;
		this.now = now;
	}

	/** In the last rounds of two services of a key. */
	static ReadingChanges felt(KeyJob then, KeyJob now) {
		return new ReadingChanges(readings(then, then.lastRound()), readings(now, now.lastRound()));
	}

	/** As delivered. */
	static ReadingChanges delivered(KeyJob then, KeyJob now) {
		return new ReadingChanges(readings(then, Optional.ofNullable(then.service().getDelivered())),
				readings(now, Optional.ofNullable(now.service().getDelivered())));
	}

	/**
	 * A change for each hour at which the feelers said something else.
	 *
	 * @param what the key of the words that name it, with the hour
	 */
	Stream<Change> changes(String what) {
		return now.entrySet().stream()
				.map(felt -> new Change(Messages.of(what, felt.getKey()),
						then.getOrDefault(felt.getKey(), KeyAspects.notSaid()), felt.getValue(), ""))
				.filter(change -> !change.then().equals(change.now()));
	}

	private static Map<ClockHour, String> readings(KeyJob job, Optional<Round> round) {
		Map<ClockHour, String> readings = new LinkedHashMap<>();
		round.ifPresent(felt -> {
			List<ClockHour> hours = job.hours(felt);
			for (int index = 0; index < Math.min(hours.size(), felt.getReadings().size()); index++) {
				readings.put(hours.get(index), words(felt.getReadings().get(index), felt));
			}
		});
		return readings;
	}

	private static String words(FeelerReading reading, Round round) {
		return reading.free().flatMap(free -> Lengths.exact(free, Lengths.unit(round.getUnit(), round)))
				.map(leaf -> LengthWords.figure(leaf)).orElseGet(() -> drag(reading.toString()));
	}

	private static String drag(String written) {
		return written.equals(".") ? Messages.of("compare.drags") : written;
	}
}
