package padwright.workup.mechanism;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import padwright.engine.mechanism.Pressing;
import padwright.engine.pitch.NoteName;
import padwright.model.keysystem.Fingering;

/**
 * A fingering of a key system.
 *
 * @param name the note with its cents; for a further fingering of the note with its label or, without one, its number
 *     behind a slash, as in {@code D4/side}, {@code C4 +50/2}
 * @param fingering as it is written
 * @param cents how far it is off the note, in cents
 * @param pressing what it presses of what the system has
 * @param missing the touches it names that the system lacks
 */
public record SystemFingering(String name, Fingering fingering, BigDecimal cents, Pressing pressing,
		List<String> missing) {

	public SystemFingering {
		missing = List.copyOf(missing);
	}

	public String note() {
		return fingering.getNote();
	}

	/** Written pitch in cents above MIDI 0; empty if the note is no name of one. */
	public OptionalInt pitch() {
		try {
			return OptionalInt.of(NoteName.parse(note()).midi() * 100 + cents.intValue());
		} catch (IllegalArgumentException notANote) {
			return OptionalInt.empty();
		}
	}

	public Optional<String> label() {
		return Optional.ofNullable(fingering.getLabel());
	}
}
