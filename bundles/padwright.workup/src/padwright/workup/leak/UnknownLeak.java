package padwright.workup.leak;

/**
 * A key whose leak cannot be told.
 *
 * @param key name of the key
 * @param why in words, as in {@code not felt yet}
 */
public record UnknownLeak(String key, String why) {
}
