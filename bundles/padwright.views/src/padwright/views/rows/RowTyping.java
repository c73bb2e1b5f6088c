package padwright.views.rows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.model.FeelerReading;
import padwright.views.Figures;
import padwright.views.clock.ReadingEntry;
import padwright.views.clock.ReadingKeys;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;

/**
 * The readings of a row while they are typed into a cell, with the strokes that the rim clock and bench mode know.
 *
 * @param keys what one stroke says
 * @param hours that are read
 * @param words readings typed so far
 * @param figure that is not ended yet
 */
public record RowTyping(ReadingKeys keys, int hours, List<String> words, String figure) {

	public RowTyping {
		words = List.copyOf(words);
	}

	/** Nothing is typed yet; nothing for a row that is not in the plan. */
	public static Optional<RowTyping> of(KeyRow row) {
		return row.job().map(job -> new RowTyping(
				ReadingKeys.of(job.plan().feelers(), job.plan().plan().isGraded()), hours(job).size(), List.of(), ""));
	}

	private static List<ClockHour> hours(KeyJob job) {
		return job.lastRound().map(job::hours).orElse(job.plan().plan().getHours());
	}

	/** Whether a stroke can belong to the readings of a row. */
	public static boolean takes(char stroke) {
		return ReadingEntry.takes(stroke) || stroke == ReadingKeys.ALL_DRAG;
	}

	/** With one stroke more; a blank ends a figure, and the rubout takes the last stroke back. */
	public RowTyping press(char stroke) {
		if (stroke == '\b') {
			return back();
		}
		if (stroke == ' ') {
			return figure.isEmpty() ? this : with(List.of(figure));
		}
		if (isFull() || !takes(stroke)) {
			return this;
		}
		if (!figure.isEmpty()) {
			return new RowTyping(keys, hours, words, figure + stroke);
		}
		if (stroke == ReadingKeys.ALL_DRAG) {
			return with(Collections.nCopies(hours - words.size(), FeelerReading.DRAGS.toString()));
		}
		return keys.reading(stroke).map(reading -> with(List.of(word(reading))))
				.orElseGet(() -> new RowTyping(keys, hours, words, String.valueOf(stroke)));
	}

	private static String word(LeafReading reading) {
		return reading.slides().map(Figures::shown)
				.orElse((reading.lightly() ? FeelerReading.DRAGS_LIGHTLY : FeelerReading.DRAGS).toString());
	}

	private RowTyping with(List<String> more) {
		List<String> all = new ArrayList<>(words);
		all.addAll(more);
		return new RowTyping(keys, hours, all, "");
	}

	private RowTyping back() {
		return figure.isEmpty() ? new RowTyping(keys, hours, words.subList(0, Math.max(0, words.size() - 1)), "")
				: new RowTyping(keys, hours, words, figure.substring(0, figure.length() - 1));
	}

	/** Whether every hour has its reading. */
	public boolean isFull() {
		return words.size() >= hours;
	}

	/** As the cell shows it. */
	public String text() {
		return Stream.concat(words.stream(), Stream.of(figure)).filter(word -> !word.isEmpty())
				.collect(Collectors.joining(" "));
	}
}
