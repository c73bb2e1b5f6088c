package padwright.views.board;

import java.util.List;

import padwright.views.Messages;
import padwright.workup.next.NextStep.Kind;

/**
 * A lane of the board: instruments of which one kind of thing is next.
 *
 * @param cards by the day on which they are promised
 */
public record BoardLane(Kind kind, List<BoardCard> cards) {

	public BoardLane {
		cards = List.copyOf(cards);
	}

	/** What stands over it. */
	public String heading() {
		return switch (kind) {
		case AGREE -> Messages.of("board.agree");
		case WAIT -> Messages.of("board.wait");
		case MORNING -> Messages.of("board.morning");
		case WORK -> Messages.of("board.work");
		case DELIVER -> Messages.of("board.deliver");
		case SECOND_LOOK -> Messages.of("board.secondLook");
		};
	}
}
