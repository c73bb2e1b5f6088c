package padwright.views.board;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import padwright.views.Messages;
import padwright.workup.next.NextStep;

/** What cards of the board say. */
final class BoardWords {

	private BoardWords() {
	}

	/** When it is due and who wrote last, in one line; empty where neither is said. */
	static String due(BoardCard card) {
		List<String> words = new ArrayList<>();
		card.due().ifPresent(day -> words.add(due(card, day)));
		if (!card.hand().isEmpty()) {
			words.add(Messages.of("board.hand", card.hand()));
		}
		return String.join(" · ", words);
	}

	private static String due(BoardCard card, LocalDate day) {
		if (card.steps().get(0).kind() == NextStep.Kind.SECOND_LOOK) {
			return Messages.of("board.asked", day);
		}
		return card.late() ? Messages.of("board.late", day) : Messages.of("board.due", day);
	}

	/** Where it stands, in one line; empty where that is not said. */
	static String stage(BoardCard card) {
		List<String> words = new ArrayList<>();
		if (!card.player().isEmpty()) {
			words.add(card.player());
		}
		if (!card.stage().isEmpty()) {
			words.add(Messages.of("board.reached", card.stage()));
		}
		return String.join(" · ", words);
	}

	/** One thing to do, with its keys, and with the day where it cannot be done before. */
	static String step(NextStep step, LocalDate today) {
		String what = step.keys().isEmpty() ? step.told().words() : Messages.of("board.keys", step.told(), step.keys());
		return step.from().filter(day -> day.isAfter(today)).filter(day -> step.kind() != NextStep.Kind.WAIT)
				.map(day -> Messages.of("board.from", what, day)).orElse(what);
	}

	/** All of a card for those who hear it. */
	static String spoken(BoardLane lane, BoardCard card, LocalDate today) {
		List<String> words = new ArrayList<>(List.of(lane.heading(), card.instrument(), stage(card), due(card)));
		card.steps().forEach(step -> words.add(step(step, today)));
		words.removeIf(String::isEmpty);
		return String.join(". ", words);
	}
}
