package padwright.engine.mechanism;

import java.util.OptionalInt;

/**
 * A note and what is pressed for it.
 *
 * @param name what it is called, unlike any other fingering
 * @param cents its pitch in hundredths of an equally tempered semitone above MIDI number 0; nothing if not known
 * @param pressing what is pressed
 */
public record TriedFingering(String name, OptionalInt cents, Pressing pressing) {

	/** @throws IllegalArgumentException if the name is blank */
	public TriedFingering {
		if (name.isBlank()) {
			throw new IllegalArgumentException("a fingering needs a name");
		}
	}
}
