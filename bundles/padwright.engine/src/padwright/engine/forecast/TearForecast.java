package padwright.engine.forecast;

/**
 * Pads expected to tear before the next service.
 *
 * @param expected mean number of pads
 * @param low the interval's lower end, whole pads
 * @param high the interval's upper end, whole pads: how many to have in stock
 * @param coverage probability the interval was asked to hold; it holds at least that, counts being whole
 */
public record TearForecast(double expected, int low, int high, double coverage) {
}
