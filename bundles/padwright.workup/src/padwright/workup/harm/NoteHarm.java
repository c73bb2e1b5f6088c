package padwright.workup.harm;

/**
 * What a leaking pad does to one note.
 *
 * @param note its fingering's name
 * @param decibels by how much weaker it is, above 0
 * @param cents by how much sharper it is
 */
public record NoteHarm(String note, Likely decibels, Likely cents) {
}
