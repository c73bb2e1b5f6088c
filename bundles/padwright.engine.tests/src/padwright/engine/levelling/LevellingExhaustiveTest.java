package padwright.engine.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The whole answer, tie for tie, against trying everything. */
class LevellingExhaustiveTest {

	@Test
	void twoPiecesOfFewFilms() {
		LevellingCases cases = new LevellingCases(1);
		for (int i = 0; i < 3000; i++) {
			assertSameAsExhaustive(cases.problem(cases.next(1, 4), cases.next(0, 3)), "case " + i);
		}
	}

	@Test
	void twoPiecesOfEveryFilm() {
		LevellingCases cases = new LevellingCases(2);
		for (int i = 0; i < 60; i++) {
			assertSameAsExhaustive(cases.problem(8, 2), "case " + i);
		}
	}

	@Test
	void threePiecesOfOneFilm() {
		LevellingCases cases = new LevellingCases(3);
		for (int i = 0; i < 150; i++) {
			assertSameAsExhaustive(cases.problem(1, 3), "case " + i);
		}
	}

	@Test
	void threePiecesOfTwoFilms() {
		LevellingCases cases = new LevellingCases(4);
		for (int i = 0; i < 20; i++) {
			assertSameAsExhaustive(cases.problem(2, 3), "case " + i);
		}
	}

	@Test
	void fourPiecesOfOneFilm() {
		LevellingCases cases = new LevellingCases(5);
		for (int i = 0; i < 8; i++) {
			assertSameAsExhaustive(cases.problem(1, 4), "case " + i);
		}
	}

	private static void assertSameAsExhaustive(LevellingProblem problem, String label) {
		ExhaustiveLevelling.Answer expected = ExhaustiveLevelling.solve(problem);
		LevellingSolution solution = Levelling.solve(problem);
		int hours = solution.pieces().stream().mapToInt(piece -> piece.arc().halfHours() / 2).sum();
		ExhaustiveLevelling.Answer actual = new ExhaustiveLevelling.Answer(solution.excess().nanometres(),
				solution.pieces().size(), solution.spreadAfter().nanometres(), solution.meanLift().nanometres(), hours,
				solution.pieces());
		assertEquals(expected, actual, () -> label + ": " + problem);
		assertTrue(solution.proof().optimal(), label);
		assertEquals(solution.spreadAfter(), solution.proof().bound(), label);
	}
}
