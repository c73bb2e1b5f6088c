package padwright.workup.history;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * How the gap under one pad changed from one service to a later one, as far as the readings of both tell: a change is only
 * told where it is likely. A model: the feeler decides.
 *
 * @param left  day on which the pad was left
 * @param found day on which it was found
 * @param kind  in one word
 * @param by    the likeliest change, above zero where the gap opened; nothing where none is told
 * @param hour  where it is, for a change at some hours only; else where it is greatest
 * @param chance that it is so, 0 to 1; 0 where no change is told
 */
public record Movement(LocalDate left, LocalDate found, Kind kind, Length by, ClockHour hour, double chance) {

	/** What became of a pad. */
	public enum Kind {
		/** No change that the readings tell. */
		HELD,
		/** The gap opened all in all. */
		OPENED,
		/** The gap closed all in all. */
		CLOSED,
		/** Neither, but the gap changed at some hours. */
		SHIFTED
	}

	/**
	 * From what the gap may have been on both days.
	 *
	 * @param finest the finest feeler; changes of less than half of it do not matter
	 */
	static Movement between(PadGaps left, PadGaps found, Length finest) {
		int count = Math.max(left.count(), found.count());
		double least = finest.nanometres() / 2.0;
		ClockHour most = IntStream.range(0, ClockHour.STATIONS).mapToObj(ClockHour::new)
				.max(Comparator.comparingDouble(hour -> IntStream.range(0, count)
						.mapToDouble(index -> Math.abs(found.at(index, hour) - left.at(index, hour))).sum()))
				.orElseThrow();
		Optional<LikelyChange> mean = LikelyChange.of(count, index -> found.mean(index) - left.mean(index), least / 2);
		if (mean.isPresent()) {
			Kind kind = mean.get().by().signum() > 0 ? Kind.OPENED : Kind.CLOSED;
			return new Movement(left.date(), found.date(), kind, mean.get().by(), most, mean.get().chance());
		}
		return LikelyChange.of(count, index -> found.at(index, most) - left.at(index, most), least)
				.map(change -> new Movement(left.date(), found.date(), Kind.SHIFTED, change.by(), most, change.chance()))
				.orElseGet(() -> new Movement(left.date(), found.date(), Kind.HELD, Length.ZERO, most, 0));
	}
}
