package padwright.engine.seating;

import padwright.engine.clock.ClockHour;

/**
 * The one further hour whose reading would help most; where every hour read drags, the likeliest one to be open after all.
 *
 * @param hour to be felt
 * @param gain by how much it would raise the chance to be level after the best that could be done then, 0 to 1
 * @param open the chance that the gap is wider than the seat there, 0 to 1
 */
public record NextHour(ClockHour hour, double gain, double open) {
}
