package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.seating.WhyNothing;
import padwright.language.Examples;
import padwright.language.Mark;
import padwright.language.TestShop;
import padwright.model.Lengths;
import padwright.model.plan.Document;
import padwright.model.plan.Piece;
import padwright.model.plan.Round;
import padwright.workup.checks.IssueCodes;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.FullShims;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlacedPieces;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

class SolutionEditsTest {

	private static final String SHOP = """
			system Flute {
				key A cup 16.5 mm
				key B cup 16.5 mm
			}
			stock Bench {
				levelling { enough 1 % }
				material polyester { }
				pad Soft { kind felt stiffness 0 }
				film Clear polyester { 0.5 1 2 5 7.5 thou }
				film Metric polyester { 0.0127 0.1 0.123457 mm }
				feeler Tape 0.5 thou
				feeler Leaf 1 thou
				feeler Thick 2 thou
			}
			""";

	static List<Path> plans() {
		return Examples.documents().stream().filter(file -> file.toString().endsWith(".plan")).toList();
	}

	private static PlanSolution solve(TestShop shop, String name, WrittenAnswers written) {
		return PlanSolver.solve(new ServicePlan(shop.document(name).getPlans().get(0)), written, job -> {
		});
	}

	private static String solved(String row, WrittenAnswers written) {
		String text = SHOP + "plan P for Flute with Bench {\n\tfit Soft with Clear\n\tread at 12 6\n" + row + "\n}\n";
		String edited = solvedText(text, written);
		String before = "read at 12 6\n";
		return edited.substring(edited.indexOf(before) + before.length(), edited.length() - "\n}\n".length());
	}

	private static String solvedText(String text, WrittenAnswers written) {
		TestShop shop = TestShop.of("shop.plan", text);
		return TextEdit.apply(SolutionEdits.of(solve(shop, "shop.plan", written), written), text);
	}

	@Test
	void newClausesStandAtTheirPlaces() {
		assertEquals("key A empty 15 15 stack 7.5 7.5 felt . . shim none",
				solved("key A empty 15 15 felt . .", WrittenAnswers.KEEP));
		assertEquals("key A found torn fit Soft empty 15 15 stack 7.5 7.5 remark \"r\"",
				solved("key A found torn fit Soft empty 15 15 remark \"r\"", WrittenAnswers.KEEP));
	}

	@Test
	void remarksStay() {
		assertEquals("""
				key A // one
					empty 15 15 stack 7.5 7.5 // two
					felt . . shim none // three
				// four""", solved("""
				key A // one
					empty 15 15 // two
					felt . . // three
				// four""", WrittenAnswers.REPLACE));
	}

	@Test
	void remarksInsideAReplacedClauseComeBehindIt() {
		assertEquals("""
				key A empty 15 15 stack 7.5 7.5 // first
				 // second
				 felt . . shim none // third
				 remark "r\"""", solved("""
				key A empty 15 15 stack 5 // first
				 5 // second
				 5 felt . . shim 1 from 2 // third
				 to 4 remark "r\"""", WrittenAnswers.REPLACE));
	}

	@Test
	void whatIsNotedIsKeptOrReplaced() {
		String row = "key A empty 15 15 stack 5 5 5 felt . . shim 1 from 2 to 4";
		assertEquals(row, solved(row, WrittenAnswers.KEEP));
		assertEquals("key A empty 15 15 stack 7.5 7.5 felt . . shim none", solved(row, WrittenAnswers.REPLACE));
	}

	@Test
	void partsThatAreNotNotedAreAddedToThoseKept() {
		assertEquals("key A empty 15 15 stack 5 5 5 felt . . shim none",
				solved("key A empty 15 15 stack 5 5 5 felt . .", WrittenAnswers.KEEP));
		assertEquals("key A empty 15 15 stack 7.5 7.5 felt . . shim none",
				solved("key A empty 15 15 felt . . shim none", WrittenAnswers.KEEP));
	}

	@Test
	void aStackThatIsNotNeededGoes() {
		assertEquals("key A empty 0 0  felt . . shim none",
				solved("key A empty 0 0 stack 5 felt . .", WrittenAnswers.REPLACE));
	}

	@Test
	void onlyTheLastRoundIsAnswered() {
		assertEquals("key A empty 15 15 stack 7.5 7.5 felt . 0.5 shim 0.5 from 5 to 7\n\t\tfelt . . shim none",
				solved("key A empty 15 15 felt . 0.5 shim 0.5 from 5 to 7\n\t\tfelt . .", WrittenAnswers.REPLACE));
	}

	@Test
	void figuresAreExactInAnyUnit() {
		String plan = "\nplan P for Flute with Bench {\n\tfit Soft with Metric\n\tread at 12 6\n"
				+ "\tkey A empty 0.223457 0.223457 mm\n}\n";
		assertEquals(SHOP + plan.replace("mm\n}", "mm stack 0.123457 0.1 mm\n}"),
				solvedText(SHOP + plan, WrittenAnswers.KEEP));
		assertEquals("unit mm\n" + SHOP + plan.replace("mm\n}", "mm stack 0.123457 0.1\n}"),
				solvedText("unit mm\n" + SHOP + plan, WrittenAnswers.KEEP));
		String thou = plan.replace("Metric", "Clear").replace("0.223457 0.223457", "0.1905 0.1905");
		assertEquals("unit mm\n" + SHOP + thou.replace("mm\n}", "mm stack 7.5 thou\n}"),
				solvedText("unit mm\n" + SHOP + thou, WrittenAnswers.KEEP));
	}

	@ParameterizedTest
	@MethodSource("plans")
	void examplesReadBackAsSolved(Path file) {
		for (WrittenAnswers written : WrittenAnswers.values()) {
			String name = Examples.name(file);
			String text = Examples.text(file);
			PlanSolution solution = solve(Examples.with(file, text), name, written);
			String edited = TextEdit.apply(SolutionEdits.of(solution, written), text);
			assertEquals(withoutAnswers(text), withoutAnswers(edited));
			TestShop reread = Examples.with(file, edited);
			assertReadsAs(solution, reread.document(name), written);
			assertEquals(List.of(), SolutionEdits.of(solve(reread, name, WrittenAnswers.KEEP), WrittenAnswers.KEEP));
		}
	}

	/** Examples are laid out in one way and have no remarks inside rows, so patterns find their clauses. */
	private static String withoutAnswers(String text) {
		String piece = "[0-9.]+( mm)? from [0-9.]+ to [0-9.]+";
		return text.replaceAll(" stack( [0-9.]+)+( mm)?", "").replaceAll(" full [+-][0-9.]+( mm)?", "")
				.replaceAll(" out " + piece + "(, " + piece + ")*", "")
				.replaceAll(" shim (none|" + piece + "(, " + piece + ")*)", "");
	}

	private static void assertReadsAs(PlanSolution solution, Document reread, WrittenAnswers written) {
		List<KeyJob> rows = new ServicePlan(reread.getPlans().get(0)).jobs();
		for (int index = 0; index < rows.size(); index++) {
			KeySolution solved = solution.keys().get(index);
			KeyJob row = rows.get(index);
			boolean stackKept = written == WrittenAnswers.KEEP && !solved.job().stack().isEmpty();
			List<Length> stack = stackKept ? solved.job().stack()
					: solved.height().map(answer -> answer.solution().pieces()).orElse(solved.job().stack());
			assertEquals(stack, row.stack());
			Round before = solved.job().lastRound().orElse(null);
			boolean isKept = before == null || solved.level().isEmpty()
					|| written == WrittenAnswers.KEEP && PlacedPieces.isAnswered(before)
					|| solved.level().get().seat().whyNothing().filter(why -> why != WhyNothing.LEVEL_ENOUGH).isPresent();
			List<String> pieces = isKept ? pieces(before)
					: solved.level().orElseThrow().seat().place().stream().map(PartialShim::toString).toList();
			assertEquals(pieces, pieces(row.lastRound().orElse(null)));
			assertEquals(isKept ? before == null ? Length.ZERO : FullShims.change(before)
					: solved.level().orElseThrow().seat().fullShims(),
					row.lastRound().map(FullShims::change).orElse(Length.ZERO));
		}
	}

	private static List<String> pieces(Round round) {
		return round == null ? List.of() : round.getPieces().stream().map(SolutionEditsTest::inWords).toList();
	}

	private static String inWords(Piece piece) {
		return Lengths.of(piece.getThickness(), piece).orElseThrow().toString().replace(" thou", "") + " from "
				+ piece.getFrom() + " to " + piece.getTo();
	}

	@ParameterizedTest
	@EnumSource
	void solvedExamplesUseNoMoreFilmThanThereIs(WrittenAnswers written) {
		for (Path file : plans()) {
			String name = Examples.name(file);
			PlanSolution solution = solve(Examples.with(file, Examples.text(file)), name, written);
			Set<String> before = codes(Examples.with(file, Examples.text(file)).findings(name));
			String edited = TextEdit.apply(SolutionEdits.of(solution, written), Examples.text(file));
			Set<String> after = codes(Examples.with(file, edited).findings(name));
			assertFalse(after.contains(IssueCodes.FILM_SHORT) && !before.contains(IssueCodes.FILM_SHORT), name);
			assertFalse(after.contains(IssueCodes.SYNTAX) && !before.contains(IssueCodes.SYNTAX), name);
		}
	}

	private static Set<String> codes(List<Mark> findings) {
		return findings.stream().map(Mark::code).collect(Collectors.toSet());
	}
}
