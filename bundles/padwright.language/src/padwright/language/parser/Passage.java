package padwright.language.parser;

/**
 * A part of a text that cannot be read and is passed over.
 *
 * @param start offset of its first character
 * @param end offset behind its last
 * @param message why it cannot be read; null where nothing is known
 */
record Passage(int start, int end, String message) {
}
