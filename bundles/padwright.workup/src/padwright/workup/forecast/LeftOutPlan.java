package padwright.workup.forecast;

/**
 * A plan that tells nothing about the time to come.
 *
 * @param plan its name
 * @param why in words, as in {@code it has no date}
 */
public record LeftOutPlan(String plan, String why) {
}
