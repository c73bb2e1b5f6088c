package padwright.workup.history;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;

/**
 * How the widest gap that one pad is found with changes over the years: the median of the slopes between all pairs of
 * services, which one odd reading does not move (P. K. Sen, 1968; from memory), for every gap that there may have been. Only
 * told where its direction is likely.
 *
 * @param services how many it is from, three or more
 * @param perYear  the likeliest; positive where the gap grows
 * @param chance   that it has this direction, 0 to 1
 */
public record Trend(int services, Length perYear, double chance) {

	private static final int FEWEST = 3;
	private static final double DAYS_IN_A_YEAR = 365.25;

	/** Nothing from fewer than three days, or where no direction is likely. */
	static Optional<Trend> of(List<PadGaps> found) {
		if (found.stream().map(PadGaps::date).distinct().count() < FEWEST) {
			return Optional.empty();
		}
		int count = found.stream().mapToInt(PadGaps::count).min().orElseThrow();
		return LikelyChange.of(count, index -> slope(found, index), 0)
				.map(change -> new Trend(found.size(), change.by(), change.chance()));
	}

	private static double slope(List<PadGaps> found, int index) {
		List<Double> slopes = new ArrayList<>();
		for (PadGaps first : found) {
			for (PadGaps second : found) {
				long days = ChronoUnit.DAYS.between(first.date(), second.date());
				if (days > 0) {
					slopes.add((second.widest(index) - first.widest(index)) / (days / DAYS_IN_A_YEAR));
				}
			}
		}
		Collections.sort(slopes);
		int half = slopes.size() / 2;
		return slopes.size() % 2 == 1 ? slopes.get(half) : (slopes.get(half - 1) + slopes.get(half)) / 2;
	}
}
