package padwright.workup.history;

import padwright.workup.words.Chance;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;

/** What became of a pad, in words. */
public final class MovementWords {

	private MovementWords() {
	}

	/** For example {@code opened by about 0.8 thou, most at 3 (94 %)}. */
	public static String of(Movement movement) {
		String amount = LengthWords.roughWithUnit(movement.by().abs());
		String sure = Chance.of(movement.chance());
		return switch (movement.kind()) {
		case HELD -> Messages.of("moved.held");
		case SHIFTED -> Messages.of(movement.by().signum() > 0 ? "moved.openedAt" : "moved.closedAt", amount, movement.hour(), sure);
		case OPENED -> Messages.of("moved.opened", amount, movement.hour(), sure);
		case CLOSED -> Messages.of("moved.closed", amount, movement.hour(), sure);
		};
	}
}
