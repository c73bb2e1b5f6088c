package padwright.workup.sound;

/**
 * A fingering that has no sound.
 *
 * @param name as the mechanism names it
 * @param why in words
 */
public record LeftOutNote(String name, String why) {
}
