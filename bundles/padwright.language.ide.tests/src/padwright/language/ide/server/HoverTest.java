package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoverTest {

	private static final String PLAN = """
			plan Work for BoehmC with Bench {
				fit Rigid on Disc20 with Clear glue ThinGlue
				read at 12 3 6 9
				key Fs empty 15 15 14.5 15.5 stack 7.5 felt . 0.5 . 1 shim 0.5 from 8 to 10
				key F empty 15 15 15 15 felt . . . .
			}
			""";

	private static final String SYSTEM = """
			unit mm
			system Parts {
				joint body long 300 bore 19 at 0, 18 at 300
				touch Pair "both" by R3
				touch L1
				hole Low "first" 4 chimney 3 by Pair at 10
				hole Lower "second" 6 by Pair at 14
				hole Vent 3
				key Register "register" closed by Pair holds Plate when Other is pressed over Vent cup 6
				key Plate open by L1 cup 16 perforated 6
				key Other turns with Plate closes Plate when Register is not pressed
				rod Upper on body from 20 to 60 carries Register pinned, Plate
			}
			""";

	@TempDir
	private Path folder;
	private Path plan;
	private Path system;
	private Path stock;
	private Connection editor;

	@BeforeEach
	void openShop() throws Exception {
		TestShop shop = TestShop.example(folder);
		plan = shop.write("plans/work.plan", PLAN);
		system = shop.write("systems/parts.keys", SYSTEM);
		stock = shop.file("stock/bench.stock");
		editor = Connection.open(folder);
	}

	@AfterEach
	void close() throws Exception {
		editor.close();
	}

	/** Cup 2.96 mm deep, gap 15, seat 2, disc 20, pad 98 thou: 116.535 + 15 + 2 - 20 - 98 = 15.535 thou. */
	@Test
	void tellsTheHeightWithItsFigures() throws Exception {
		String told = told(plan, Texts.start(PLAN, "stack"));
		assertTrue(told.contains("depth 116.5 + gap 15 + sinks 2 − backing disc 20 − pad 98 = 15.5 thou"), told);
		assertTrue(told.contains("sums to 7.5 thou, 8 thou too low"), told);
	}

	@Test
	void tellsChancesAndTheGapInWords() throws Exception {
		String told = told(plan, Texts.start(PLAN, "felt"));
		assertTrue(told.contains("As felt level: ") && told.contains("With what was done level: "), told);
		assertTrue(told.contains("The gap at its widest, 9 o'clock: "), told);
		assertTrue(told.contains("the feeler decides"), told);
	}

	@Test
	void tellsWhatAKeyIsInItsSystem() throws Exception {
		String told = told(plan, Texts.start(PLAN, "F empty"));
		assertTrue(told.contains("closes Fs, As"), told);
		assertTrue(told.contains("cup 17.5 mm deep 2.95 mm"), told);
	}

	/** Of what a system says besides keys, where it is defined and where it is named. */
	@ParameterizedTest
	@CsvSource(delimiter = ';', textBlock = """
			Pair "both"          ; both, finger R3, presses register, covers first, second
			Pair at 10           ; both, finger R3, presses register, covers first, second
			L1                   ; L1, finger L1, presses Plate
			Low "first"          ; first, 4 mm, chimney 3 mm, covered by both, at 10 mm
			Vent 3               ; Vent, 3 mm, under register
			Vent cup             ; Vent, 3 mm, under register
			body long            ; body, 300 mm long, bore 19 mm, 18 mm
			Upper on             ; Upper, from 20 mm to 60 mm, carries register, Plate
			Plate open           ; Plate, open, by L1, cup 16 mm, perforated 6 mm
			Register "register"  ; register, closed, by Pair, holds Plate while Other is pressed, over Vent, hole 3 mm, cup 6 mm
			Other turns          ; Other, open, turns with Plate, closes Plate while Register is not pressed
			""")
	void tellsWhatAPartOfASystemIs(String place, String expected) throws Exception {
		String told = told(system, Texts.start(SYSTEM, place));
		assertEquals(expected, told);
	}

	@Test
	void tellsWhatTheStockSaysOfAnArticle() throws Exception {
		String told = told(plan, Texts.start(PLAN, "Rigid"));
		assertTrue(told.contains("98 thou ± 1 thou"), told);
		assertTrue(told.contains("animal product"), told);
	}

	@Test
	void tellsWhatIsLeftOfAFilm() throws Exception {
		assertTrue(told(plan, Texts.start(PLAN, "Clear")).contains("Left: 0.5 × 79"));
	}

	@Test
	void tellsTheWordingOfAHazard() throws Exception {
		assertTrue(told(plan, Texts.start(PLAN, "ThinGlue")).contains("**EUH202** Cyanoacrylate. Danger."));
		Position code = Texts.start(Files.readString(stock), "H315");
		assertEquals("**H315** Causes skin irritation.", told(stock, code));
	}

	@Test
	void tellsWhatAWordMeans() throws Exception {
		assertTrue(told(plan, Texts.start(PLAN, "read")).startsWith("**read**: "));
	}

	@Test
	void saysNothingBetweenWords() throws Exception {
		assertNull(hover(plan, new Position(1, 0)));
	}

	@Test
	void figuresStandAtTheEndsOfLines() throws Exception {
		Range all = new Range(new Position(0, 0), new Position(99, 0));
		List<InlayHint> hints = editor.get(editor.server().getTextDocumentService()
				.inlayHint(new InlayHintParams(Connection.document(plan), all)));
		assertEquals(List.of(2, 3, 4), hints.stream().map(hint -> hint.getPosition().getLine()).toList());
		assertEquals("4 hours: a saddle open at 1.5 reads flat", hints.get(0).getLabel().getLeft());
		String row = hints.get(1).getLabel().getLeft();
		assertTrue(row.startsWith("Σ 7.5 thou, 8 thou too low, level ") && row.contains(" → "), row);
		assertTrue(hints.get(2).getLabel().getLeft().matches("level \\d\\d %"), hints.get(2).toString());
		assertEquals(Texts.end(PLAN, "from 8 to 10"), hints.get(1).getPosition());
	}

	@Test
	void figuresAreAskedForAgainWhenTheStockChanges() throws Exception {
		editor.type(stock, Files.readString(stock).replace("sinks 2 thou", "sinks 3 thou"));
		editor.client().awaitRefreshedHints();
	}

	@Test
	void hoversHintsAndFindingsAreInTheUnitThatTheEditorWants() throws Exception {
		settings("mm");
		try {
			editor.client().awaitRefreshedHints();
			Range all = new Range(new Position(0, 0), new Position(99, 0));
			String row = editor.get(editor.server().getTextDocumentService()
					.inlayHint(new InlayHintParams(Connection.document(plan), all))).get(1).getLabel().getLeft();
			assertTrue(row.startsWith("Σ 0.1905 mm, 0.2045 mm too low, level "), row);
			String told = told(plan, Texts.start(PLAN, "stack"));
			assertTrue(told.contains("depth 2.96 + gap 0.381 + sinks 0.051 − backing disc 0.508 − pad 2.489 = 0.395 mm"), told);
			editor.client().diagnostics(Connection.uri(plan), found -> found.stream()
					.anyMatch(each -> each.getMessage().getLeft().contains("sum to 0.1905 mm, 0.2045 mm too low")));
		} finally {
			settings("thou");
		}
	}

	private void settings(String unit) {
		editor.server().getWorkspaceService().didChangeConfiguration(new DidChangeConfigurationParams(
				Map.of("padwright", Map.of("unit", unit))));
	}

	private String told(Path file, Position position) throws Exception {
		return hover(file, position).getContents().getRight().getValue();
	}

	private Hover hover(Path file, Position position) throws Exception {
		return editor.get(editor.server().getTextDocumentService()
				.hover(new HoverParams(Connection.document(file), position)));
	}
}
