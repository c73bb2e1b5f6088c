package padwright.workup.sound;

import padwright.workup.words.Phrase;

/**
 * A fingering that has no sound.
 *
 * @param name as the mechanism names it
 * @param why in words
 */
public record LeftOutNote(String name, Phrase why) {
}
