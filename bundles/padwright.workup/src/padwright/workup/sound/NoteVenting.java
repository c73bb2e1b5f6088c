package padwright.workup.sound;

/**
 * What a raised pad does to a note by hanging over its hole.
 *
 * @param note its fingering's name
 * @param cents above the pad out of the way: below 0 as a rule
 * @param decibels over the pad out of the way: below 0 as a rule
 * @param byTenth by how many cents 0.1 mm more sharpens it
 */
public record NoteVenting(String note, double cents, double decibels, double byTenth) {
}
