package padwright.paper.card;

import java.util.Optional;

/**
 * How likely a pad is level, and how wide its gap is, in words.
 *
 * @param now as it was felt, as in {@code 35 %}
 * @param gap where the gap is widest now, as in {@code 0.6 to 1.3 thou at 3}
 * @param after with what is to be done; empty if nothing is, or it is not known
 */
public record CardLevel(String now, String gap, Optional<String> after) {
}
