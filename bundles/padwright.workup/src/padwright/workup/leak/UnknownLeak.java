package padwright.workup.leak;

import padwright.workup.words.Phrase;

/**
 * A key whose leak cannot be told.
 *
 * @param key name of the key
 * @param why in words, as in {@code not felt yet}
 */
public record UnknownLeak(String key, Phrase why) {
}
