package padwright.views.sound;

import java.util.List;
import java.util.Optional;

import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.ToneSound;

/**
 * How the fingerings of a system sound.
 *
 * @param scale nothing where there is no air column, or nothing to sound
 * @param why in words, where there is nothing
 */
public record ScaleHeard(SoundWish wish, PitchAxis axis, Optional<ScaleSound> scale, String why) {

	/** In the order of the system. */
	List<ToneSound> notes() {
		return scale.map(ScaleSound::notes).orElse(List.of());
	}

	Optional<ToneSound> note(String name) {
		return notes().stream().filter(note -> note.tone().name().equals(name)).findFirst();
	}
}
