package padwright.workup.job;

import padwright.model.plan.Waiting;
import padwright.workup.words.Phrase;

/** What a job waits for, in words. */
public final class WaitWords {

	private WaitWords() {
	}

	/** As in {@code waits for parts: pads of 17.5 mm, until 2026-03-09}, without a full stop. */
	public static String of(Waiting waiting) {
		return phrase(waiting).words();
	}

	/** The same, among what a result has to say. */
	public static Phrase phrase(Waiting waiting) {
		Phrase what = switch (waiting.getReason()) {
		case PARTS -> Phrase.of("wait.parts");
		case ESTIMATE -> Phrase.of("wait.estimate");
		case PLAYER -> Phrase.of("wait.player");
		case GLUE -> Phrase.of("wait.glue");
		};
		Phrase named = waiting.getText() == null ? what : Phrase.of("wait.named", what, waiting.getText());
		return waiting.getUntil() == null ? named : Phrase.of("wait.until", named, waiting.getUntil());
	}
}
