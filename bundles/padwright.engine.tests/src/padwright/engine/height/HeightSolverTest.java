package padwright.engine.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

class HeightSolverTest {

	@Test
	void standsOnNothingForATargetOfNothingOrLess() {
		HeightSolution solution = HeightSolver.solve(Length.thou("-2"), halfThouFilms());

		assertEquals(List.of(), solution.pieces());
		assertEquals(Length.thou("2"), solution.error());
		assertEquals(Length.ZERO, HeightSolver.solve(Length.ZERO, halfThouFilms()).error());
	}

	@Test
	void reportsTheWholeTargetAsErrorWithoutFilm() {
		assertEquals(Length.thou("-13"), HeightSolver.solve(Length.thou("13"), List.of()).error());
		assertEquals(Length.thou("-13"),
				HeightSolver.solve(Length.thou("13"), List.of(new FilmSupply(Length.thou("1"), 0))).error());
	}

	@Test
	void usesAllOfAStockThatDoesNotReach() {
		List<FilmSupply> supply = List.of(new FilmSupply(Length.thou("5"), 1), new FilmSupply(Length.thou("1"), 3));

		HeightSolution solution = HeightSolver.solve(new Length(Long.MAX_VALUE), supply);

		assertEquals(thou("5", "1", "1", "1"), solution.pieces());
	}

	@Test
	void prefersTheSumUnderTheTargetToAnEquallyNearSumOver() {
		HeightSolution solution = HeightSolver.solve(Length.thou("2"), unlimited("1.5", "2.5"));

		assertEquals(thou("1.5"), solution.pieces());
		assertEquals(Length.thou("-0.5"), solution.error());
	}

	@Test
	void goesOverTheTargetWhereThatIsNearer() {
		HeightSolution solution = HeightSolver.solve(Length.thou("2.1"), unlimited("1.5", "2.5"));

		assertEquals(thou("2.5"), solution.pieces());
		assertEquals(Length.thou("0.4"), solution.error());
	}

	@Test
	void takesTheMostEvenOfEquallyManyPieces() {
		assertEquals(thou("5", "5", "5"), HeightSolver.solve(Length.thou("15"), unlimited("2.5", "5", "6", "4"))
				.pieces());
		assertEquals(thou("4", "4", "3"), HeightSolver.solve(Length.thou("11"), unlimited("5", "4", "3", "1"))
				.pieces());
	}

	/**
	 * Above 100, 1 + 5 + 6 and 2 + 3 + 7 have the same sum and the same sum of squares, and no pair adds up to 312.
	 */
	@Test
	void breaksATieOfEvennessByTheThickestPiece() {
		List<FilmSupply> supply = oneOfEach("101", "105", "106", "102", "103", "107");

		assertEquals(thou("106", "105", "101"), HeightSolver.solve(Length.thou("312"), supply).pieces());
	}

	/** Likewise 10 + 13 + 13 and 11 + 11 + 14, of films of which any number may be taken. */
	@Test
	void breaksATieOfEvennessWithoutEndOfFilmToo() {
		assertEquals(thou("13", "13", "10"),
				HeightSolver.solve(Length.thou("36"), unlimited("10", "11", "13", "14")).pieces());
	}

	/** With it, all thicknesses would be steps of a nanometre, too many to search. */
	@Test
	void filmThatHasRunOutIsNoPartOfTheSearch() {
		List<FilmSupply> supply = List.of(FilmSupply.unlimited(Length.thou("5")), new FilmSupply(new Length(12_701), 0));

		assertEquals(List.of(), HeightSolver.solve(Length.thou("300"), supply).pieces().stream()
				.filter(piece -> !piece.equals(Length.thou("5"))).toList());
	}

	/** Fewest blocks of the 81-piece inch gauge-block set, as in machinists' text-book examples. */
	@Test
	void stacksInchGaugeBlocks() {
		assertEquals(thou("1000", "134", "100.5"), HeightSolver.solve(Length.thou("1234.5"), inchSet()).pieces());
		assertEquals(thou("3000", "750", "126", "100.2"),
				HeightSolver.solve(Length.thou("3976.2"), inchSet()).pieces());
		HeightSolution four = HeightSolver.solve(Length.thou("1752.3"), inchSet());
		assertEquals(4, four.pieces().size());
		assertEquals(Length.ZERO, four.error());
	}

	/**
	 * The worked example of the NPL's answers to frequent questions on gauge blocks: 58.345 mm takes five blocks by its
	 * digit rule (1.005 + 1.04 + 1.30 + 5 + 50); the fewest are four. The contents of the set of 112 are from memory.
	 */
	@Test
	void stacksMetricGaugeBlocksWithFewerThanTheDigitRule() {
		HeightSolution solution = HeightSolver.solve(Length.millimetres("58.345"), metricSet());

		assertEquals(4, solution.pieces().size());
		assertEquals(Length.ZERO, solution.error());
	}

	/** The non-canonical coin system of the programming problem "Canonical Coin Systems" (open.kattis.com). */
	@Test
	void doesNotTakeTheThickestFirst() {
		assertEquals(thou("3", "3"), HeightSolver.solve(Length.thou("6"), unlimited("1", "3", "4")).pieces());
	}

	/** Derived here: no piece is thicker than 15 half thou, and every size up to there is on hand. */
	@Test
	void needsAFifteenthOfTheHalfThouRoundedUp() {
		for (int halfThou = 1; halfThou <= 200; halfThou++) {
			HeightSolution solution = HeightSolver.solve(Length.thou("0.5").times(halfThou), halfThouFilms());

			assertEquals((halfThou + 14) / 15, solution.pieces().size());
			assertEquals(Length.ZERO, solution.error());
		}
	}

	@Test
	void agreesWithExhaustiveSearchOnLimitedStockWithGaps() {
		SplittableRandom random = new SplittableRandom(20_261);
		for (int run = 0; run < 6_000; run++) {
			List<FilmSupply> supply = randomSupply(random, 1 + random.nextInt(6), 15);
			Length target = new Length(random.nextInt(-20, 700) * 635L + random.nextInt(2) * random.nextInt(12_700));

			assertEquals(ExhaustiveHeight.pieces(target, supply), HeightSolver.solve(target, supply).pieces(),
					() -> "target " + target + " from " + supply);
		}
	}

	@Test
	void agreesWithExhaustiveSearchOnThicknessesOfSmallDivisor() {
		SplittableRandom random = new SplittableRandom(77);
		for (int run = 0; run < 3_000; run++) {
			List<FilmSupply> supply = new ArrayList<>();
			for (int film = 0; film < 5; film++) {
				supply.add(new FilmSupply(new Length(1 + random.nextInt(30)), random.nextInt(4)));
			}
			Length target = new Length(random.nextInt(90));

			assertEquals(ExhaustiveHeight.pieces(target, supply), HeightSolver.solve(target, supply).pieces(),
					() -> "target " + target.nanometres() + " nm from " + supply);
		}
	}

	@Test
	void doesNotDependOnTheOrderOfTheSupply() {
		SplittableRandom random = new SplittableRandom(3);
		for (int run = 0; run < 500; run++) {
			List<FilmSupply> supply = randomSupply(random, 8, 15);
			List<FilmSupply> shuffled = new ArrayList<>(supply);
			Collections.shuffle(shuffled, new Random(run));
			Length target = new Length(random.nextInt(800_000));

			assertEquals(HeightSolver.solve(target, supply), HeightSolver.solve(target, shuffled));
		}
	}

	@Test
	void isNeverFurtherOffWithMoreFilmToChooseFrom() {
		SplittableRandom random = new SplittableRandom(4);
		for (int run = 0; run < 1_000; run++) {
			List<FilmSupply> more = randomSupply(random, 6, 15);
			Length target = new Length(random.nextInt(500_000));

			Length with = HeightSolver.solve(target, more).error().abs();
			Length without = HeightSolver.solve(target, more.subList(0, 5)).error().abs();
			assertTrue(with.compareTo(without) <= 0, () -> "target " + target + " from " + more);
		}
	}

	@Test
	void refusesWhatWouldNotFitInMemory() {
		List<FilmSupply> oneNanometre = List.of(FilmSupply.unlimited(new Length(1)));
		assertThrows(IllegalArgumentException.class, () -> HeightSolver.solve(Length.millimetres("2"), oneNanometre));

		List<FilmSupply> manyOdd = IntStream.range(0, 400)
				.mapToObj(i -> FilmSupply.unlimited(new Length(12_701 + 2 * i))).toList();
		assertThrows(IllegalArgumentException.class, () -> HeightSolver.solve(Length.millimetres("0.9"), manyOdd));

		List<FilmSupply> thin = List.of(FilmSupply.unlimited(new Length(10)));
		assertThrows(IllegalArgumentException.class, () -> HeightSolver.solve(new Length(700_000), thin));
	}

	private static List<FilmSupply> randomSupply(SplittableRandom random, int films, int thickest) {
		List<FilmSupply> supply = new ArrayList<>();
		for (int film = 0; film < films; film++) {
			supply.add(new FilmSupply(Length.thou("0.5").times(1 + random.nextInt(thickest)), random.nextInt(5)));
		}
		return supply;
	}

	private static List<Length> thou(String... thou) {
		return Stream.of(thou).map(Length::thou).toList();
	}

	private static List<FilmSupply> oneOfEach(String... thou) {
		return thou(thou).stream().map(thickness -> new FilmSupply(thickness, 1)).toList();
	}

	private static List<FilmSupply> unlimited(String... thou) {
		return thou(thou).stream().map(FilmSupply::unlimited).toList();
	}

	private static List<FilmSupply> halfThouFilms() {
		return IntStream.rangeClosed(1, 15).mapToObj(Length.thou("0.5")::times).map(FilmSupply::unlimited).toList();
	}

	private static List<FilmSupply> inchSet() {
		return Stream.of(blocks(2_540, 1_001, 1_009), blocks(25_400, 101, 149), blocks(1_270_000, 1, 19),
				blocks(25_400_000, 1, 4)).flatMap(block -> block).toList();
	}

	private static List<FilmSupply> metricSet() {
		return Stream.of(blocks(500, 2_001, 2_001), blocks(1_000, 1_001, 1_009), blocks(10_000, 101, 149),
				blocks(500_000, 1, 49), blocks(25_000_000, 1, 4)).flatMap(block -> block).toList();
	}

	private static Stream<FilmSupply> blocks(long stepNanometres, int first, int last) {
		return IntStream.rangeClosed(first, last)
				.mapToObj(i -> new FilmSupply(new Length(stepNanometres * i), 1));
	}
}
