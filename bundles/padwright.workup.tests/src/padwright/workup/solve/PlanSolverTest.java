package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.DoubtedReading;
import padwright.engine.evidence.FeltReading;
import padwright.engine.length.Length;
import padwright.engine.rim.FeelerSet;
import padwright.engine.seating.Prices;
import padwright.engine.seating.WhyNothing;
import padwright.model.Measure;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystemFactory;
import padwright.model.keysystem.PadCup;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.model.stock.Levelling;
import padwright.model.stock.StockFactory;
import padwright.model.stock.StockedSize;
import padwright.workup.DemoPlan;
import padwright.workup.words.Phrase;

/** Demo film of 0.5, 1 and 2 thou; gaps of 2 thou are made up by one piece of 2, or two of 1, or four of a half. */
class PlanSolverTest {

	private static final Length HALF = Length.thou("0.5");
	private static final Length ONE = Length.thou("1");
	private static final Length TWO = Length.thou("2");
	private static final String LEANING = "2 1 . 1";

	private final DemoPlan demo = new DemoPlan();

	private PlanSolution solve(WrittenAnswers written) {
		return PlanSolver.solve(demo.service(), written, job -> {
		});
	}

	private KeyService row(String name, String gaps) {
		KeyService row = demo.row(demo.key(name));
		row.setEmpty(demo.thicknesses(gaps));
		return row;
	}

	/** How many blanks of 0.5, 1 and 2 thou there are. */
	private void blanks(int half, int one, int two) {
		List<StockedSize> sizes = demo.plan.getFitting().getFilms().getThicknesses().getSizes();
		sizes.get(0).setQuantity(half);
		sizes.get(1).setQuantity(one);
		sizes.get(2).setQuantity(two);
	}

	private static List<Length> stack(PlanSolution solution, int row) {
		return solution.keys().get(row).height().orElseThrow().solution().pieces();
	}

	private static List<Length> pieces(PlanSolution solution, int row) {
		return solution.keys().get(row).level().orElseThrow().films();
	}

	@Test
	void rowsShareTheFilmInTheirOrder() {
		row("A", "2 2 2 2");
		row("B", "2 2 2 2");
		row("C", "2 2 2 2");
		blanks(4, 2, 1);
		PlanSolution solution = solve(WrittenAnswers.REPLACE);
		assertEquals(List.of(TWO), stack(solution, 0));
		assertEquals(List.of(ONE, ONE), stack(solution, 1));
		assertEquals(List.of(HALF, HALF, HALF, HALF), stack(solution, 2));
	}

	@Test
	void heightAndPiecesOfARowShareTheFilm() {
		demo.felt(row("A", "2 2 2 2"), LEANING);
		blanks(0, 0, 1);
		PlanSolution solution = solve(WrittenAnswers.REPLACE);
		assertEquals(List.of(TWO), stack(solution, 0));
		assertEquals(List.of(), pieces(solution, 0));
	}

	@Test
	void keptAnswersOfLaterRowsKeepTheirFilm() {
		row("A", "2 2 2 2");
		row("B", "2 2 2 2").setStack(demo.thicknesses("2"));
		blanks(0, 2, 1);
		assertEquals(List.of(ONE, ONE), stack(solve(WrittenAnswers.KEEP), 0));
		assertEquals(List.of(TWO), stack(solve(WrittenAnswers.KEEP), 1));
	}

	@Test
	void replacedAnswersOfEarlierRowsGiveTheirFilmBack() {
		row("A", "1 1 1 1").setStack(demo.thicknesses("2"));
		row("B", "2 2 2 2");
		blanks(0, 1, 1);
		assertEquals(List.of(TWO), stack(solve(WrittenAnswers.REPLACE), 1));
		assertEquals(List.of(), stack(solve(WrittenAnswers.KEEP), 1).stream().filter(TWO::equals).toList());
	}

	@Test
	void newPiecesBesideAKeptStackTakeTheirFilm() {
		KeyService first = row("A", "2 2 2 2");
		first.setStack(demo.thicknesses("2"));
		demo.felt(first, LEANING);
		row("B", "2 2 2 2");
		blanks(0, 0, 3);
		PlanSolution kept = solve(WrittenAnswers.KEEP);
		assertFalse(kept.keys().get(0).level().orElseThrow().seat().nothing(), "a leaf as thick as the seat slides");
		int taken = 1 + pieces(kept, 0).size();
		assertEquals(Math.min(1, 3 - taken), stack(kept, 1).size());
	}

	@Test
	void aPadNotedAsLevelTakesNoFilm() {
		KeyService first = row("A", "0 0 0 0");
		demo.felt(first, LEANING).setLevel(true);
		row("B", "2 2 2 2");
		blanks(0, 0, 1);
		assertEquals(List.of(TWO), stack(solve(WrittenAnswers.KEEP), 1));
	}

	@Test
	void filmNotedBeyondTheStockIsNotGivenBack() {
		row("A", "2 2 2 2").setStack(demo.thicknesses("2 2 2"));
		row("B", "2 2 2 2");
		blanks(0, 0, 1);
		PlanSolution solution = solve(WrittenAnswers.REPLACE);
		assertEquals(List.of(TWO), stack(solution, 0));
		assertEquals(List.of(), stack(solution, 1));
	}

	@Test
	void piecesOfEarlierRoundsStayTaken() {
		KeyService first = row("A", "0 0 0 0");
		demo.shim(demo.felt(first, LEANING), "2", "10", "2");
		demo.felt(first, ". . . .");
		row("B", "2 2 2 2");
		blanks(0, 0, 1);
		assertEquals(List.of(), stack(solve(WrittenAnswers.REPLACE), 1));
	}

	@Test
	void whatCannotBeReplacedStaysTaken() {
		KeyService first = demo.row(demo.key("A"));
		first.setStack(demo.thicknesses("2"));
		row("B", "2 2 2 2");
		blanks(0, 0, 1);
		assertEquals(List.of(), stack(solve(WrittenAnswers.REPLACE), 1));
	}

	@Test
	void everyPartThatIsNotSolvedHasAReason() {
		demo.row(demo.key("A"));
		KeySolution nothingRead = solve(WrittenAnswers.KEEP).keys().get(0);
		assertTrue(nothingRead.height().isEmpty() && nothingRead.level().isEmpty());
		assertEquals(2, nothingRead.unsolved().size());
	}

	@Test
	void aRowThatIsSolvedHasNone() {
		demo.felt(row("A", "2 2 2 2"), ". . . .");
		assertEquals(List.of(), solve(WrittenAnswers.KEEP).keys().get(0).unsolved());
	}

	@Test
	void withoutFilmFeelersOrRoomThereIsNoAnswer() {
		KeyService first = row("A", "2 2 2 2");
		Round round = demo.felt(first, ". . . .");
		demo.stock.getFeelers().clear();
		assertPartsSolved(true, false);
		PadCup cup = KeySystemFactory.eINSTANCE.createPadCup();
		cup.setDiameter(Measure.valueOf("17 mm"));
		cup.setDepth(Measure.valueOf("1 mm"));
		first.getKey().setCup(cup);
		demo.pad.setThickness(Measure.valueOf("2 mm"));
		assertPartsSolved(false, false);
		first.getRounds().remove(round);
		demo.plan.getFitting().setFilms(null);
		assertPartsSolved(false, false);
	}

	private void assertPartsSolved(boolean height, boolean level) {
		KeySolution solution = solve(WrittenAnswers.KEEP).keys().get(0);
		assertEquals(height, solution.height().isPresent());
		assertEquals(level, solution.level().isPresent());
		assertFalse(solution.unsolved().isEmpty());
	}

	@Test
	void aHeightBeyondAnyInstrumentIsNotSolved() {
		row("A", "15000000 15000000 15000000 15000000");
		assertPartsSolved(false, false);
	}

	@Test
	void withTheFilmUsedUpItSaysSo() {
		demo.felt(row("A", "2 2 2 2"), ". . 1 .");
		blanks(0, 0, 0);
		assertEquals(List.of("not to height: no film is left in Clear; order film, or fit another set",
				"not levelled: no film is left in Clear; order film, or fit another set"),
				solve(WrittenAnswers.KEEP).keys().get(0).unsolved().stream().map(Phrase::words).toList());
	}

	@Test
	void aRowThatMakesNoSenseStopsNoOther() {
		demo.felt(row("A", "2 2 2 2"), ". 1 . .");
		demo.felt(row("B", "2 2 2 2"), ". 1 . .");
		demo.stock.getLevelling();
		demo.plan.setTolerance(Measure.valueOf("0 thou"));
		PlanSolution solution = solve(WrittenAnswers.KEEP);
		assertEquals(List.of("A", "B"), solution.keys().stream().map(key -> key.job().name()).toList());
		assertFalse(solution.keys().get(0).unsolved().isEmpty());
	}

	@Test
	void whatTheShopGoesByCounts() {
		demo.felt(row("A", "2 2 2 2"), ". . . .");
		assertEquals(Prices.USUAL, solve(WrittenAnswers.KEEP).keys().get(0).level().orElseThrow().problem().prices());
		Levelling shop = StockFactory.eINSTANCE.createLevelling();
		shop.setFeel(Measure.valueOf("0.2 thou"));
		shop.setPiece(new BigDecimal("3"));
		shop.setChange(new BigDecimal("10"));
		shop.setEnough(new BigDecimal("1"));
		demo.stock.setLevelling(shop);
		LevelAnswer answer = solve(WrittenAnswers.KEEP).keys().get(0).level().orElseThrow();
		assertEquals(new Prices(0.03, 0.1, 0.01), answer.problem().prices());
		assertEquals(Length.thou("0.2"), answer.problem().pad().feel());
		assertEquals(Optional.of(WhyNothing.LEVEL_ENOUGH), answer.seat().whyNothing());
	}

	@Test
	void aKeyThatDragsNowhereIsHeldOffByItsCouplings() {
		Key driver = demo.key("F");
		demo.couple(driver, demo.key("Fs"), demo.screw("UNM 1.00"));
		demo.felt(demo.row(driver), "1 1 1 1");
		KeySolution solution = solve(WrittenAnswers.KEEP).keys().get(0);
		LevelAnswer answer = solution.level().orElseThrow();
		assertTrue(answer.seat().heldOff());
		assertEquals(List.of(), answer.films());
		assertTrue(SeatWords.of(solution.job(), answer).get(0).contains("F > Fs"), SeatWords.of(solution.job(), answer)::toString);
	}

	@Test
	void progressIsToldRowByRow() {
		row("A", "2 2 2 2");
		row("B", "2 2 2 2");
		List<String> told = new ArrayList<>();
		PlanSolver.solve(demo.service(), WrittenAnswers.KEEP, job -> told.add(job.name()));
		assertEquals(List.of("A", "B"), told);
	}

	@Test
	void theStiffnessOfAPadIsItsOwnOrAssumed() {
		demo.felt(row("A", "2 2 2 2"), LEANING);
		assertFalse(solve(WrittenAnswers.KEEP).keys().get(0).level().orElseThrow().pad().assumedStiffness());
		demo.pad.setStiffness(null);
		assertTrue(solve(WrittenAnswers.KEEP).keys().get(0).level().orElseThrow().pad().assumedStiffness());
		demo.pad.setStiffness(new BigDecimal("1.5"));
		assertTrue(solve(WrittenAnswers.KEEP).keys().get(0).level().orElseThrow().pad().assumedStiffness());
	}

	@Test
	void whatIsSaidOfALevellingTellsWhereItStandsAndWhatWasAssumed() {
		demo.felt(row("A", "2 2 2 2"), LEANING);
		demo.pad.setStiffness(null);
		KeySolution solution = solve(WrittenAnswers.KEEP).keys().get(0);
		String said = String.join("\n", SeatWords.of(solution.job(), solution.level().orElseThrow()));
		for (String words : List.of("Level now: ", "Level after this: ", "The stock gives no stiffness for this pad; ",
				"The key system gives no arm; the rim's radius and 5 mm were assumed")) {
			assertTrue(said.contains(words), said);
		}
	}

	@Test
	void aReadingThatDoesNotGoWithTheOthersIsNamedWithItsRound() {
		FeelerSet leaves = new FeelerSet(List.of(HALF, ONE));
		assertEquals("The drag at 3 o'clock in round 2 does not go with the others: feel it again",
				SeatWords.doubted(new DoubtedReading(1, FeltReading.drag(ClockHour.ofHour(3), leaves), 0.9)));
		assertEquals("The reading 0.5 thou at 9 o'clock in round 1 does not go with the others: feel it again",
				SeatWords.doubted(new DoubtedReading(0, FeltReading.slide(ClockHour.ofHour(9), HALF, leaves), 0.9)));
	}
}
