package padwright.paper.sound;

import java.util.Optional;

/**
 * A fingering in the picture of a scale.
 *
 * @param name of the note, without that of the fingering
 * @param semitone its pitch as written, in semitones from anywhere
 * @param octave 1 for the lowest
 * @param usual whether it is part of the scale; else a further fingering
 * @param cents by which it is off; nothing where no resonance is near
 * @param decibels by which its resonance is stronger than the next, if there is a next
 */
public record SoundMark(String name, double semitone, int octave, boolean usual, Optional<Double> cents,
		Optional<Double> decibels) {
}
