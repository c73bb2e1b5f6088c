package padwright.engine.film;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;

/**
 * Shares partial shims of one thickness and one diameter out among discs of that film: each disc gives a ring of 24
 * half hours, and pieces lie in it end to end. Longest first, each into the first disc with room (first fit
 * decreasing): never more than 11/9 of the fewest discs and 6/9 of a disc besides (Dósa 2007, from memory). The
 * same pieces give the same discs.
 */
public final class RingNest {

	/**
	 * A piece in its place.
	 *
	 * @param piece which of the pieces given, from 0
	 * @param disc which disc, from 0
	 * @param startHalfHour where it begins, half hours clockwise around the disc, 0 to 23
	 */
	public record Place(int piece, int disc, int startHalfHour) {
	}

	private RingNest() {
	}

	/** A place for each piece, disc by disc and around each disc. */
	public static List<Place> of(List<Arc> arcs) {
		List<Integer> longestFirst = new ArrayList<>();
		for (int piece = 0; piece < arcs.size(); piece++) {
			longestFirst.add(piece);
		}
		longestFirst.sort(Comparator.comparing(piece -> -arcs.get(piece).halfHours()));
		List<Integer> used = new ArrayList<>();
		List<Place> places = new ArrayList<>();
		for (int piece : longestFirst) {
			int length = arcs.get(piece).halfHours();
			int disc = firstWithRoom(used, length);
			places.add(new Place(piece, disc, used.get(disc)));
			used.set(disc, used.get(disc) + length);
		}
		places.sort(Comparator.comparing(Place::disc).thenComparing(Place::startHalfHour));
		return List.copyOf(places);
	}

	private static int firstWithRoom(List<Integer> used, int length) {
		for (int disc = 0; disc < used.size(); disc++) {
			if (used.get(disc) + length <= ClockHour.STATIONS) {
				return disc;
			}
		}
		used.add(0);
		return used.size() - 1;
	}
}
