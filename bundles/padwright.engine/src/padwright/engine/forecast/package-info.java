/**
 * Looking ahead: how many pads a player will tear before the next service, and what will be too old by then.
 *
 * <pre>{@code
 * TearRate belief = TearRate.MOST_PLAYERS.after(List.of(new TornPads(2, 1), new TornPads(1, 1.5)));
 * TearForecast year = belief.forecast(1, 0.9);      // expected 1.41, interval 0 to 4 pads
 * new AgedMaterial("microfibre", LocalDate.of(2019, 3, 1), 6).isOverdue(LocalDate.of(2026, 3, 1)); // true
 * }</pre>
 */
package padwright.engine.forecast;
