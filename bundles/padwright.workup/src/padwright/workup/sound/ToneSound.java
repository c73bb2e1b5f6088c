package padwright.workup.sound;

import padwright.engine.acoustics.NoteSound;

/**
 * How a fingering sounds.
 *
 * @param octave of the note from C to B as written, the lowest of the system being 1
 */
public record ToneSound(FingeredTone tone, NoteSound sound, int octave) {
}
