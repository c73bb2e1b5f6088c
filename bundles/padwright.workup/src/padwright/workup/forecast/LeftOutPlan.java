package padwright.workup.forecast;

import padwright.workup.words.Phrase;

/**
 * A plan that tells nothing about the time to come.
 *
 * @param plan its name
 * @param why in words, as in {@code it has no date}
 */
public record LeftOutPlan(String plan, Phrase why) {
}
