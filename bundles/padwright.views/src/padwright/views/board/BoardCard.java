package padwright.views.board;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import padwright.workup.next.NextStep;

/**
 * One instrument on one lane of the board.
 *
 * @param id tells it from all other cards
 * @param steps what is to be done or waited for there, at least one
 * @param late whether its promised day is past
 */
public record BoardCard(String id, List<NextStep> steps, boolean late) {

	public BoardCard {
		steps = List.copyOf(steps);
	}

	private NextStep first() {
		return steps.get(0);
	}

	public String plan() {
		return first().plan();
	}

	public String instrument() {
		return first().instrument();
	}

	public String player() {
		return first().player();
	}

	/** The stage that was reached last, or empty. */
	public String stage() {
		return first().stage();
	}

	public Optional<LocalDate> due() {
		return first().due();
	}

	/** Who wrote last, or empty. */
	public String hand() {
		return first().hand().orElse("");
	}
}
