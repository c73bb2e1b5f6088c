package padwright.views.rows;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.language.edit.ReadingEdits;
import padwright.language.edit.ShimEdits;
import padwright.language.edit.TextEdit;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;
import padwright.workup.words.ShownUnit;

/** Turns what is typed into a cell into edits of the plan's text. */
public final class RowEdit {

	private static final String DRAGS = ".";
	private static final String DRAGS_LIGHTLY = "-";

	private RowEdit() {
	}

	/**
	 * The edits that make a row say in {@code column} what was typed, in the unit that is shown.
	 *
	 * @throws IllegalArgumentException in the user's words, if it cannot be written
	 */
	public static List<TextEdit> of(KeyRow row, KeyColumn column, String typed) {
		KeyJob job = row.job().orElseThrow(() -> new IllegalArgumentException(Messages.of("table.noRow", row.label())));
		List<String> words = Arrays.stream(typed.replace(',', '.').strip().split("[\\s+]+"))
				.filter(word -> !word.isEmpty()).toList();
		return switch (column) {
		case READINGS -> readings(job, words);
		case SHIMS -> ShimEdits.stack(job.service(), words.stream().map(RowEdit::thickness).toList());
		default -> throw new IllegalArgumentException(Messages.of("table.computed"));
		};
	}

	private static List<TextEdit> readings(KeyJob job, List<String> words) {
		int hours = job.lastRound().map(job::hours).orElse(job.plan().plan().getHours()).size();
		if (words.isEmpty() || words.size() > hours) {
			throw new IllegalArgumentException(Messages.of("table.hours", hours));
		}
		return ReadingEdits.latest(job.service(), words.stream().map(word -> reading(word, job)).toList());
	}

	private static LeafReading reading(String word, KeyJob job) {
		if (word.equals(DRAGS_LIGHTLY) && job.plan().plan().isGraded()) {
			return LeafReading.DRAGS_LIGHTLY;
		}
		return word.equals(DRAGS) ? LeafReading.DRAGS
				: Optional.of(length(word)).filter(leaf -> leaf.signum() > 0).map(LeafReading::slides)
						.orElse(LeafReading.DRAGS);
	}

	private static Length thickness(String word) {
		Length thickness = length(word);
		if (thickness.signum() <= 0) {
			throw noThickness(word);
		}
		return thickness;
	}

	private static Length length(String word) {
		return Figures.read(word).orElseThrow(() -> noThickness(word));
	}

	private static IllegalArgumentException noThickness(String word) {
		return new IllegalArgumentException(Messages.of("table.noThickness", word, ShownUnit.symbol()));
	}
}
