package padwright.engine.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;

class RingNestTest {

	@Test
	void noPieceLiesOverAnotherAndNoneIsLost() {
		SplittableRandom random = new SplittableRandom(11);
		for (int round = 0; round < 500; round++) {
			List<Arc> arcs = arcs(random, random.nextInt(20), 23);
			List<RingNest.Place> places = RingNest.of(arcs);
			assertEquals(arcs.size(), places.stream().map(RingNest.Place::piece).distinct().count());
			int disc = -1;
			int free = 0;
			for (RingNest.Place place : places) {
				free = place.disc() == disc ? free : 0;
				disc = place.disc();
				assertTrue(place.startHalfHour() >= free, places.toString());
				free = place.startHalfHour() + arcs.get(place.piece()).halfHours();
				assertTrue(free <= ClockHour.STATIONS, places.toString());
			}
		}
	}

	/** Shortest first would need a third disc. */
	@Test
	void theLongestPiecesAreLaidFirstAndTheDiscsToldInTheirOrder() {
		List<Arc> arcs = List.of(arc(6), arc(10), arc(14), arc(18));
		assertEquals(List.of(new RingNest.Place(3, 0, 0), new RingNest.Place(0, 0, 18), new RingNest.Place(2, 1, 0),
				new RingNest.Place(1, 1, 14)), RingNest.of(arcs));
	}

	private static Arc arc(int halfHours) {
		return new Arc(new ClockHour(0), halfHours);
	}

	/** The bound of first fit decreasing against the fewest discs of an exhaustive search. */
	@Test
	void staysWithinItsBoundOfTheFewest() {
		SplittableRandom random = new SplittableRandom(12);
		for (int round = 0; round < 200; round++) {
			List<Arc> arcs = arcs(random, random.nextInt(1, 8), 22);
			int discs = 1 + RingNest.of(arcs).stream().mapToInt(RingNest.Place::disc).max().orElseThrow();
			int fewest = fewest(arcs, 0, new ArrayList<>());
			assertTrue(discs >= fewest && discs <= 11.0 / 9 * fewest + 6.0 / 9, arcs.toString());
		}
	}

	private static int fewest(List<Arc> arcs, int next, List<Integer> used) {
		if (next == arcs.size()) {
			return used.size();
		}
		int length = arcs.get(next).halfHours();
		int best = Integer.MAX_VALUE;
		for (int disc = 0; disc <= used.size(); disc++) {
			List<Integer> tried = new ArrayList<>(used);
			if (disc == used.size()) {
				tried.add(0);
			}
			if (tried.get(disc) + length <= ClockHour.STATIONS) {
				tried.set(disc, tried.get(disc) + length);
				best = Math.min(best, fewest(arcs, next + 1, tried));
			}
		}
		return best;
	}

	private static List<Arc> arcs(SplittableRandom random, int count, int longest) {
		List<Arc> arcs = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			arcs.add(new Arc(new ClockHour(random.nextInt(24)), random.nextInt(1, longest + 1)));
		}
		return arcs;
	}
}
