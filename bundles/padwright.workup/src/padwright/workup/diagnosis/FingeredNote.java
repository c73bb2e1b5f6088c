package padwright.workup.diagnosis;

import java.util.List;
import java.util.Optional;

import padwright.engine.diagnosis.NoteFingering;
import padwright.workup.words.Phrase;

/**
 * One fingering of a key system.
 *
 * @param name the note for its first fingering; for a further one with its label or, without one, its number behind a
 *     slash, as in {@code D4/side} or {@code D4/2}
 * @param label what tells it apart, if anything
 * @param number 1 for the first fingering of its note
 * @param fingering what it closes, or empty if it cannot be pressed
 * @param obstacles why it cannot be pressed; none if it can
 */
record FingeredNote(String name, Optional<String> label, int number, Optional<NoteFingering> fingering,
		List<Phrase> obstacles) {

	FingeredNote {
		obstacles = List.copyOf(obstacles);
	}

	/** Whether {@code choice}, a label in any case or a number, means this fingering. */
	boolean isMeantBy(String choice) {
		return label.filter(choice::equalsIgnoreCase).isPresent() || choice.equals(String.valueOf(number));
	}
}
