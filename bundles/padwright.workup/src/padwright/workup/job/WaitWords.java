package padwright.workup.job;

import padwright.model.plan.Waiting;
import padwright.workup.words.Messages;

/** What a job waits for, in words. */
public final class WaitWords {

	private WaitWords() {
	}

	/** As in {@code waits for parts: pads of 17.5 mm, until 2026-03-09}, without a full stop. */
	public static String of(Waiting waiting) {
		String what = switch (waiting.getReason()) {
		case PARTS -> Messages.of("wait.parts");
		case ESTIMATE -> Messages.of("wait.estimate");
		case PLAYER -> Messages.of("wait.player");
		case GLUE -> Messages.of("wait.glue");
		};
		String named = waiting.getText() == null ? what : Messages.of("wait.named", what, waiting.getText());
		return waiting.getUntil() == null ? named : Messages.of("wait.until", named, waiting.getUntil());
	}
}
