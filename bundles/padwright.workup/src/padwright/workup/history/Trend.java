package padwright.workup.history;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;

/**
 * How the spread that a pad is found with changes over the years: the median of the slopes between all pairs of
 * services, which one odd reading does not move (P. K. Sen, 1968; from memory).
 *
 * @param services how many it is from, three or more
 * @param perYear  positive where the spread grows
 */
public record Trend(int services, Length perYear) {

	private static final int FEWEST = 3;
	private static final double DAYS_IN_A_YEAR = 365.25;

	/**
	 * What was found on a day.
	 */
	record Found(LocalDate date, Length spread) {
	}

	/** Nothing from fewer than three days. */
	static Optional<Trend> of(List<Found> found) {
		if (found.stream().map(Found::date).distinct().count() < FEWEST) {
			return Optional.empty();
		}
		List<Double> slopes = new ArrayList<>();
		for (Found first : found) {
			for (Found second : found) {
				long days = ChronoUnit.DAYS.between(first.date(), second.date());
				if (days > 0) {
					slopes.add(second.spread().minus(first.spread()).nanometres() / (days / DAYS_IN_A_YEAR));
				}
			}
		}
		Collections.sort(slopes);
		int half = slopes.size() / 2;
		double median = slopes.size() % 2 == 1 ? slopes.get(half) : (slopes.get(half - 1) + slopes.get(half)) / 2;
		return Optional.of(new Trend(found.size(), new Length(Math.round(median))));
	}
}
