package padwright.engine.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

import padwright.engine.diagnosis.HittingSetSearch.Result;
import padwright.engine.diagnosis.HittingSetSearch.Scored;

class HittingSetSearchTest {

	private static final SearchLimits ALL = new SearchLimits(12, 10_000);

	/** Every subset of up to ten elements is tried; order and limits are checked against the sorted list. */
	@RepeatedTest(300)
	void equalsAnExhaustiveSearch(RepetitionInfo repetition) {
		SplittableRandom random = new SplittableRandom(9_000 + repetition.getCurrentRepetition());
		int elements = random.nextInt(1, 11);
		List<Long> conflicts = randomConflicts(random, elements, random.nextInt(1, 9));
		double[] odds = randomOdds(random, elements);
		List<Long> expected = exhaustive(conflicts, odds);
		Result all = new HittingSetSearch(conflicts, odds, ALL).run();
		assertEquals(expected, masks(all));
		assertEquals(false, all.moreMayExist());
		int some = random.nextInt(1, expected.size() + 1);
		Result first = new HittingSetSearch(conflicts, odds, new SearchLimits(12, some)).run();
		assertEquals(expected.subList(0, some), masks(first));
		assertEquals(some < expected.size(), first.moreMayExist());
		int size = random.nextInt(1, 5);
		Result small = new HittingSetSearch(conflicts, odds, new SearchLimits(size, 10_000)).run();
		assertEquals(expected.stream().filter(set -> Long.bitCount(set) <= size).toList(), masks(small));
		assertTrue(small.moreMayExist() || small.sets().size() == expected.size());
	}

	@Test
	void theOrderOfTheConflictsDoesNotMatter() {
		SplittableRandom random = new SplittableRandom(121);
		for (int i = 0; i < 100; i++) {
			List<Long> conflicts = randomConflicts(random, 12, 8);
			double[] odds = randomOdds(random, 12);
			List<Long> reversed = new ArrayList<>();
			conflicts.forEach(conflict -> reversed.add(0, conflict));
			assertEquals(new HittingSetSearch(conflicts, odds, ALL).run(),
					new HittingSetSearch(reversed, odds, ALL).run());
		}
	}

	/** Thirty pads, 300 bad notes: what is found is minimal, different, in order, and the limit is admitted. */
	@Test
	void thirtyPadsAndHundredsOfNotesStayWithinTheLimits() {
		SplittableRandom random = new SplittableRandom(122);
		for (int i = 0; i < 20; i++) {
			List<Long> conflicts = randomConflicts(random, 30, 300);
			conflicts.replaceAll(conflict -> conflict | 1L << random.nextInt(4));
			double[] odds = randomOdds(random, 30);
			Result result = new HittingSetSearch(conflicts, odds, SearchLimits.USUAL).run();
			assertTrue(result.sets().size() > 0 && result.sets().size() <= SearchLimits.USUAL.sets());
			assertEquals(result.sets().size(), new HashSet<>(masks(result)).size());
			assertEquals(result.sets().stream().sorted(HittingSetSearch.LIKELIEST_FIRST).toList(), result.sets());
			masks(result).forEach(set -> assertTrue(isMinimal(set, conflicts)));
		}
	}

	/** Thirty-two pairs have 2³² minimal sets: none is small enough, and the search ends and admits it. */
	@Test
	void aHopelessCaseEnds() {
		List<Long> conflicts = new ArrayList<>();
		for (int i = 0; i < 32; i++) {
			conflicts.add(3L << 2 * i);
		}
		double[] odds = new double[64];
		Arrays.fill(odds, 1 / 64.0);
		Result result = new HittingSetSearch(conflicts, odds, ALL).run();
		assertEquals(List.of(), result.sets());
		assertTrue(result.moreMayExist());
	}

	private static List<Long> masks(Result result) {
		return result.sets().stream().map(Scored::members).toList();
	}

	private static List<Long> exhaustive(List<Long> conflicts, double[] odds) {
		List<Scored> sets = new ArrayList<>();
		for (long set = 1; set < 1L << odds.length; set++) {
			if (isMinimal(set, conflicts)) {
				sets.add(new Scored(set, 0, product(set, odds)));
			}
		}
		return sets.stream().sorted(HittingSetSearch.LIKELIEST_FIRST).map(Scored::members).toList();
	}

	private static boolean isMinimal(long set, List<Long> conflicts) {
		boolean minimal = hitsAll(set, conflicts);
		for (long rest = set; rest != 0; rest &= rest - 1) {
			minimal &= !hitsAll(set & ~Long.lowestOneBit(rest), conflicts);
		}
		return minimal;
	}

	private static boolean hitsAll(long set, List<Long> conflicts) {
		return conflicts.stream().allMatch(conflict -> (conflict & set) != 0);
	}

	/** Powers of two, so that products are exact in any order. */
	private static double[] randomOdds(SplittableRandom random, int elements) {
		return random.ints(elements, 1, 5).mapToDouble(power -> 1.0 / (1 << power)).toArray();
	}

	private static double product(long set, double[] odds) {
		double product = 1;
		for (long rest = set; rest != 0; rest &= rest - 1) {
			product *= odds[Long.numberOfTrailingZeros(rest)];
		}
		return product;
	}

	private static List<Long> randomConflicts(SplittableRandom random, int elements, int count) {
		List<Long> conflicts = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			conflicts.add(random.nextLong(1, 1L << elements));
		}
		return conflicts;
	}
}
