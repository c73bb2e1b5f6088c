package padwright.language.merge;

/**
 * What came of a merge.
 *
 * @param text with marks where the sides conflict
 * @param conflicts how many places are marked
 * @param byLine whether it was merged by lines, since a copy could not be read as a document
 */
public record MergeResult(String text, int conflicts, boolean byLine) {
}
