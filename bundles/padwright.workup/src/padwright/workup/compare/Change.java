package padwright.workup.compare;

/**
 * What differs between two services of one key.
 *
 * @param what in trade words, as in {@code full shims}
 * @param then as the old plan has it
 * @param now as the new plan has it
 * @param by how much, where that can be told; else empty
 */
public record Change(String what, String then, String now, String by) {
}
