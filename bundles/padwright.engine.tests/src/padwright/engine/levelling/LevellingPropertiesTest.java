package padwright.engine.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

/** What must hold between the answers to related pads, and of every answer. */
class LevellingPropertiesTest {

	private static final int STATIONS = 24;
	private static final int CASES = 250;

	/** What choices are compared by, without the canonical order, which a turn or mirror changes. */
	private record Worth(Length excess, int pieces, Length spread, Length meanLift, int halfHours) {

		static Worth of(LevellingSolution solution) {
			return new Worth(solution.excess(), solution.pieces().size(), solution.spreadAfter(),
					solution.meanLift(), solution.pieces().stream().mapToInt(piece -> piece.arc().halfHours()).sum());
		}
	}

	@Test
	void anAnswerIsWhatItSays() {
		LevellingCases cases = new LevellingCases(11);
		for (int i = 0; i < CASES; i++) {
			LevellingProblem problem = problem(cases);
			LevellingSolution solution = Levelling.solve(problem);
			assertResidual(problem, solution);
			assertEquals(solution.residual().spread(), solution.spreadAfter());
			assertEquals(problem.gap().spread(), solution.spreadBefore());
			assertEquals(Math.max(0, solution.spreadAfter().minus(problem.tolerance()).nanometres()),
					solution.excess().nanometres());
			assertTrue(solution.pieces().size() <= problem.maxPieces());
			assertInStockAndOrder(problem, solution);
			assertTrue(solution.proof().optimal());
		}
	}

	private static void assertResidual(LevellingProblem problem, LevellingSolution solution) {
		long[] residual = problem.gap().toNanometres();
		for (PartialShim piece : solution.pieces()) {
			long[] lift = Lift.of(piece, problem.stiffness()).toNanometres();
			Arrays.setAll(residual, station -> residual[station] - lift[station]);
		}
		assertEquals(RimProfile.ofNanometres(residual), solution.residual());
	}

	private static void assertInStockAndOrder(LevellingProblem problem, LevellingSolution solution) {
		for (FilmSupply film : problem.films()) {
			long cut = solution.pieces().stream().filter(piece -> piece.thickness().equals(film.thickness())).count();
			assertTrue(cut <= film.pieces());
		}
		List<PartialShim> ordered = new ArrayList<>(solution.pieces());
		ordered.sort(Comparator.<PartialShim>comparingInt(piece -> piece.arc().from().station())
				.thenComparingInt(piece -> piece.arc().halfHours()).thenComparing(PartialShim::thickness));
		assertEquals(ordered, solution.pieces());
	}

	@Test
	void turningThePadTurnsTheAnswer() {
		LevellingCases cases = new LevellingCases(12);
		for (int i = 0; i < CASES; i++) {
			LevellingProblem problem = problem(cases);
			long[] gap = problem.gap().toNanometres();
			int hours = cases.next(1, 12);
			long[] turned = new long[STATIONS];
			Arrays.setAll(turned, station -> gap[(station + STATIONS - 2 * hours) % STATIONS]);
			assertEquals(Worth.of(Levelling.solve(problem)), Worth.of(Levelling.solve(with(problem, turned))));
		}
	}

	@Test
	void mirroringThePadMirrorsTheAnswer() {
		LevellingCases cases = new LevellingCases(13);
		for (int i = 0; i < CASES; i++) {
			LevellingProblem problem = problem(cases);
			long[] gap = problem.gap().toNanometres();
			long[] mirrored = new long[STATIONS];
			Arrays.setAll(mirrored, station -> gap[(STATIONS - station) % STATIONS]);
			assertEquals(Worth.of(Levelling.solve(problem)), Worth.of(Levelling.solve(with(problem, mirrored))));
		}
	}

	@Test
	void aWiderGapAllAroundChangesNothing() {
		LevellingCases cases = new LevellingCases(14);
		for (int i = 0; i < CASES; i++) {
			LevellingProblem problem = problem(cases);
			int wider = cases.next(-100_000, 100_000);
			long[] shifted = problem.gap().stream().map(gap -> gap + wider).toArray();
			LevellingSolution before = Levelling.solve(problem);
			LevellingSolution after = Levelling.solve(with(problem, shifted));
			assertEquals(before.pieces(), after.pieces());
			assertEquals(Worth.of(before), Worth.of(after));
		}
	}

	@Test
	void moreFilmsAreNeverWorse() {
		LevellingCases cases = new LevellingCases(15);
		for (int i = 0; i < CASES; i++) {
			LevellingProblem more = problem(cases);
			List<FilmSupply> fewerFilms = more.films().subList(1, more.films().size());
			LevellingProblem fewer = new LevellingProblem(more.gap(), more.stiffness(), fewerFilms, more.tolerance(),
					more.maxPieces());
			assertTrue(Levelling.solve(more).excess().compareTo(Levelling.solve(fewer).excess()) <= 0);
		}
	}

	@Test
	void aTighterToleranceNeverTakesFewerPieces() {
		LevellingCases cases = new LevellingCases(16);
		for (int i = 0; i < CASES; i++) {
			LevellingProblem loose = problem(cases);
			Length tighter = new Length(loose.tolerance().nanometres() / 2);
			LevellingProblem tight = new LevellingProblem(loose.gap(), loose.stiffness(), loose.films(), tighter,
					loose.maxPieces());
			LevellingSolution looseSolution = Levelling.solve(loose);
			LevellingSolution tightSolution = Levelling.solve(tight);
			assertTrue(tightSolution.pieces().size() >= looseSolution.pieces().size());
			assertTrue(tightSolution.spreadAfter().compareTo(looseSolution.spreadAfter()) <= 0);
		}
	}

	@Test
	void anEarlyEndIsHonestAndRepeatable() {
		LevellingCases cases = new LevellingCases(17);
		int early = 0;
		for (int i = 0; i < CASES; i++) {
			LevellingProblem problem = problem(cases);
			Budget budget = Budget.ofNodes(cases.next(1, 20_000));
			LevellingSolution ended = Levelling.solve(problem, budget);
			assertEquals(ended, Levelling.solve(problem, budget));
			LevellingSolution best = Levelling.solve(problem);
			assertTrue(ended.proof().bound().compareTo(best.spreadAfter()) <= 0);
			assertTrue(ended.excess().compareTo(best.excess()) >= 0);
			if (ended.proof().optimal()) {
				assertEquals(best, ended);
			} else {
				early++;
			}
		}
		assertTrue(early > CASES / 10);
	}

	@Test
	void timeEndsASearch() {
		LevellingProblem problem = new LevellingProblem(new LevellingCases(18).gap(), new Stiffness(0.1),
				new LevellingCases(18).films(8), Length.ZERO, 4);
		assertFalse(Levelling.solve(problem, Budget.ofTime(Duration.ofNanos(1))).proof().optimal());
	}

	@Test
	void nothingToCutLeavesThePadAsItIs() {
		RimProfile gap = new LevellingCases(19).gap();
		FilmSupply none = new FilmSupply(Length.thou("0.5"), 0);
		for (List<FilmSupply> films : List.of(List.<FilmSupply>of(), List.of(none))) {
			LevellingSolution solution = Levelling
					.solve(new LevellingProblem(gap, new Stiffness(0.1), films, Length.ZERO, 4));
			assertEquals(List.of(), solution.pieces());
			assertEquals(gap, solution.residual());
			assertTrue(solution.proof().optimal());
		}
	}

	/** Derived here: a half-thou step half way around is undone by half a thou over the low half, to the nanometre. */
	@Test
	void aStepIsFilled() {
		PartialShim piece = new PartialShim(new Arc(new ClockHour(4), 12), Length.thou("0.5"));
		LevellingProblem problem = new LevellingProblem(Lift.of(piece, new Stiffness(0)), new Stiffness(0),
				List.of(FilmSupply.unlimited(Length.thou("0.5")), FilmSupply.unlimited(Length.thou("1"))),
				Length.thou("0.25"), 4);
		LevellingSolution solution = Levelling.solve(problem);
		assertEquals(List.of(piece), solution.pieces());
		assertEquals(Length.ZERO, solution.spreadAfter());
		assertEquals(Length.thou("0.25"), solution.meanLift());
	}

	@Test
	void badProblemsAreRefused() {
		RimProfile gap = RimProfile.ofNanometres(new long[STATIONS]);
		Stiffness stiffness = new Stiffness(0);
		FilmSupply film = FilmSupply.unlimited(Length.thou("0.5"));
		long[] far = new long[STATIONS];
		far[7] = 2_000_001;
		assertRefused(RimProfile.ofNanometres(far), List.of(film), Length.ZERO, 2);
		assertRefused(gap, List.of(film, new FilmSupply(Length.thou("0.5"), 3)), Length.ZERO, 2);
		assertRefused(gap, List.of(FilmSupply.unlimited(Length.millimetres("5"))), Length.ZERO, 2);
		assertRefused(gap, List.of(film), new Length(-1), 2);
		assertRefused(gap, List.of(film), Length.ZERO, 5);
		assertRefused(gap, List.of(film), Length.ZERO, -1);
		assertEquals(0, new LevellingProblem(gap, stiffness, List.of(film), Length.ZERO, 0).maxPieces());
	}

	private static void assertRefused(RimProfile gap, List<FilmSupply> films, Length tolerance, int maxPieces) {
		assertThrows(IllegalArgumentException.class,
				() -> new LevellingProblem(gap, new Stiffness(0), films, tolerance, maxPieces));
	}

	/** Up to four pieces of up to four films; four pieces of many films are left to the outside oracle. */
	private static LevellingProblem problem(LevellingCases cases) {
		int maxPieces = cases.next(1, 5);
		return cases.problem(cases.next(1, maxPieces == 4 ? 3 : 5), maxPieces);
	}

	private static LevellingProblem with(LevellingProblem problem, long[] gap) {
		return new LevellingProblem(RimProfile.ofNanometres(gap), problem.stiffness(), problem.films(),
				problem.tolerance(), problem.maxPieces());
	}
}
