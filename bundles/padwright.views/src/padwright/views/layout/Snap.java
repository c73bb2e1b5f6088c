package padwright.views.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Finds the place that something being dragged is meant to have: where a neighbour is, where spacing becomes equal, or
 * else the nearest step. In any whole unit.
 *
 * @param step of places that nothing else speaks for, more than 0
 * @param reach how near a place must be to be meant
 */
record Snap(long step, long reach) {

	/** What a place was chosen for. */
	enum Reason {
		STEP, NEIGHBOUR, EQUAL
	}

	/** A place and what it was chosen for. */
	record Place(long at, Reason reason) {
	}

	/** Without neighbours: only steps. */
	Place toStep(long raw) {
		return new Place(Math.round(raw / (double) step) * step, Reason.STEP);
	}

	/** The place meant by {@code raw} among the places of others. */
	Place among(List<Long> others, long raw) {
		TreeSet<Long> places = new TreeSet<>(others);
		Place best = toStep(raw);
		long nearest = Long.MAX_VALUE;
		for (Place each : candidates(places, raw)) {
			long away = Math.abs(each.at() - raw);
			if (away <= reach && away < nearest) {
				nearest = away;
				best = each;
			}
		}
		return best;
	}

	private static List<Place> candidates(TreeSet<Long> places, long raw) {
		List<Place> candidates = new ArrayList<>();
		places.forEach(place -> candidates.add(new Place(place, Reason.NEIGHBOUR)));
		Long before = places.lower(raw);
		Long behind = places.higher(raw);
		if (before != null && behind != null) {
			candidates.add(new Place((before + behind) / 2, Reason.EQUAL));
		}
		if (before != null && places.lower(before) != null) {
			candidates.add(new Place(2 * before - places.lower(before), Reason.EQUAL));
		}
		if (behind != null && places.higher(behind) != null) {
			candidates.add(new Place(2 * behind - places.higher(behind), Reason.EQUAL));
		}
		return candidates;
	}
}
