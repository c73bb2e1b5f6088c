package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;

import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.CompletionParams;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.engine.length.LengthUnit;

class CompletionTest {

	private static final String STOCK = """
			stock Bench {
				material paper { hazard H315 }
				pad Small { diameters 9.5 mm }
				pad Wide { diameters 16 mm }
				film Clear paper { 0.5*3 1*1 2 thou }
				feeler Half 0.5 thou
				feeler One 1 thou
				adhesive Glue { }
				rule "no paper" warn when shim.material is paper
			}
			""";
	private static final String SYSTEM = """
			system Mini {
				touch L1
				touch L2
				touch "left thumb"
				key A "first key" cup 16 mm
				key B closes A cup 16 mm
				key C
			}
			system Less based on Mini {
				remove C
			}
			""";
	private static final String PLAN = """
			plan Work for Less with Bench {
				fit Wide with Clear
				read at 12 3 6 9
				key A felt . 0.5 . . shim 0.5 from 2 to 4, 1 from 8 to 10
			}
			""";

	@TempDir
	private Path folder;
	private TestShop shop;
	private Connection editor;

	@BeforeEach
	void openShop() throws Exception {
		shop = TestShop.empty(folder.resolve("shop"));
		shop.write("bench.stock", STOCK);
		shop.write("mini.keys", SYSTEM);
		shop.write("work.plan", PLAN);
		editor = Connection.open(shop.folder());
	}

	@AfterEach
	void close() throws Exception {
		editor.close();
	}

	/** What is offered at | and nothing else of the kind that is offered there. */
	@ParameterizedTest
	@CsvSource(delimiter = ';', textBlock = """
			key A felt       ; key A\\n key | \\n key A felt      ; B
			key A felt       ; key A\\n key B fit | \\n key A felt ; Wide
			fit Wide         ; fit | with                        ; Small, Wide
			fit Wide         ; fit W| with                       ; Wide
			key A felt       ; key B stack |\\n key A felt        ; 0.5, 2
			key A felt       ; key B felt |\\n key A felt         ; ., 0.5, 1
			key A felt       ; key B felt . . . .|\\n key A felt  ; ''
			read at 12 3 6 9 ; read at 12 3 6 9 graded\\n key B felt | ; ., -, 0.5, 1
			8 to 10          ; 8 to 10 felt . . . . out |         ; 0.5 from 2 to 4, 1 from 8 to 10
			read at 12 3 6 9 ; read at 12 3 6 |                  ; 1, 2, 4, 5, 7, 8, 9, 10, 11
			read at 12 3 6 9 ; read at 12 3 6 9 key B regulate | ; B
			key A felt       ; key B regulate B > |              ; A
			for Less         ; for |                             ; Mini, Less
			with Bench       ; with |                            ; Bench
			""")
	void inAPlanKnowsTheModel(String from, String typed, String offered) throws Exception {
		assertOffered("work.plan", PLAN.replace(from, typed.replace("\\n", "\n")), offered);
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', textBlock = """
			when shim.material is paper ; when pad.k|                ; pad.kind
			when shim.material is paper ; when shim.material is |    ; paper
			when shim.material is paper ; when hole.make is |        ; soldered, drawn
			when shim.material is paper ; when pad is |              ; Small, Wide
			when shim.material is paper ; when home.humidity > 70 |  ; %RH
			when shim.material is paper ; when key.spring > 30 |     ; grams
			when shim.material is paper ; when cup.found is |        ; warped
			when shim.material is paper ; when step is |             ; fit, glue, stack, shim, regulate
			when shim.material is paper ; when instrument.build is | ; student, professional, antique
			when shim.material is paper ; when home.d|               ; home.damper
			{ hazard H315 }             ; { hazard H22| }            ; H225, H226
			Clear paper                 ; Clear |                    ; paper
			""")
	void inAStockKnowsTheModel(String from, String typed, String offered) throws Exception {
		assertOffered("bench.stock", STOCK.replace(from, typed), offered);
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', textBlock = """
			remove C         ; remove |                    ; A, B, C
			closes A         ; closes |                    ; A, C
			key C            ; key C open by L|            ; L1, L2
			key C            ; note D4 : |                ; L1, L2, "left thumb"
			closes A         ; closes A through screw "UNM 1.0| ; "UNM 1.0"
			key C            ; key C cup 9|                ; 9 thou, 9 mm, 9 um
			key C            ; key C hole 2.5| cup 9 mm    ; 2.5 thou, 2.5 mm, 2.5 um
			key C            ; key C cup 9 m|              ; ''
			key C            ; key C closes A ratio 2|     ; ''
			""")
	void inASystemKnowsTheModel(String from, String typed, String offered) throws Exception {
		assertOffered("mini.keys", SYSTEM.replace(from, typed), offered);
	}

	/** The words that an instrument of any kind needs know its own parts. */
	@ParameterizedTest
	@CsvSource(delimiter = ';', textBlock = """
			key C turns with |              ; A, B, Lever
			key C open by |                 ; L1, L4, "both holes"
			key C over |                    ; Low, Lower
			key C on |                      ; body, foot
			key C opens A when |            ; A, B, C, Lever
			key C opens |                   ; A, B, Lever
			key C holds A, |                ; A, B, Lever
			hole H3 7 mm by |               ; L1, L4, "both holes"
			hole H3 7 mm by L1, |           ; L1, L4, "both holes"
			touch L2 on |                   ; body, foot
			rod Upper carries |             ; A, B, Lever
			rod Upper carries A pinned, |   ; A, B, Lever
			rod Upper on |                  ; body, foot
			note D4 : half |                ; L1, L4, "both holes"
			note D4 : L1 |                  ; L1, L4, "both holes"
			""")
	void inASystemKnowsItsOwnParts(String line, String offered) throws Exception {
		assertOffered("mini.keys", """
				system Whole {
					joint body
					joint foot
					%s
					touch L1
					touch L4
					touch "both holes" by R3
					hole Low 4 mm by "both holes" at 10 mm
					hole Lower 6 mm by "both holes" at 14 mm
					key A cup 16 mm perforated 6 mm
					key B turns with A
					key Lever by L4 opens A when B is pressed
				}
				""".formatted(line), offered);
	}

	@Test
	void filmSaysHowMuchIsLeft() throws Exception {
		List<CompletionItem> items = offered("work.plan", PLAN.replace("key A felt", "key B stack |\n key A felt"));
		assertEquals("2 left", named(items, "0.5").getDetail());
		assertEquals("in stock", named(items, "2").getDetail());
	}

	@Test
	void keysComeWithLabelAndFacts() throws Exception {
		CompletionItem key = named(offered("mini.keys", SYSTEM.replace("closes A", "closes |")), "A");
		assertEquals("first key", key.getDetail());
		assertTrue(key.getDocumentation().getLeft().contains("cup 16 mm"), key.toString());
	}

	@Test
	void nameThatIsAWordOfTheLanguageComesInQuotationMarks() throws Exception {
		List<CompletionItem> items = offered("mini.keys", "system Hats { key ^head key B closes | }");
		assertEquals("\"head\"", named(items, "\"head\"").getTextEdit().getLeft().getNewText());
	}

	/** Return behind the word would else add to it. */
	@ParameterizedTest
	@CsvSource(delimiter = ';', textBlock = """
			fit Wide with Clear ; fit Wide with Clear glue Glue|
			fit Wide with Clear ; fit Wide|
			fit Wide with Clear ; fit Wide with Clear \\n player saliva mild|
			read at 12 3 6 9    ; read at 12 3 6 9|
			with Bench          ; with Bench|
			felt . 0.5 . .      ; felt . 0.5 . . shim none|
			""")
	void nothingIsOfferedThatWouldGrowTogetherWithAFinishedWord(String from, String typed) throws Exception {
		String text = PLAN.replace(from, typed.replace("\\n", "\n"));
		String word = text.substring(0, text.indexOf('|')).replaceAll("(?s).*\\s", "");
		for (CompletionItem item : offered("work.plan", text)) {
			String replaced = item.getTextEdit() == null ? "" : item.getTextEdit().getLeft().getNewText();
			var range = item.getTextEdit().getLeft().getRange();
			boolean behind = range.getStart().equals(Texts.start(text, "|"));
			assertTrue(!behind || !Character.isLetterOrDigit(replaced.codePointAt(0)),
					item.getLabel() + " glued to " + word + ": " + replaced);
		}
	}

	@Test
	void wordsComeWithTheirMeaning() throws Exception {
		CompletionItem word = named(offered("work.plan", PLAN.replace("fit Wide", "|\nfit Wide")), "player");
		assertTrue(word.getDocumentation().getLeft().contains("saliva"), word.toString());
	}

	private void assertOffered(String name, String typed, String expected) throws Exception {
		List<String> all = offered(name, typed).stream()
				.filter(item -> item.getKind() != CompletionItemKind.Snippet)
				.filter(item -> item.getKind() != CompletionItemKind.Keyword
						|| item.getLabel().matches("[LR]\\d"))
				.map(CompletionItem::getLabel).filter(label -> !LengthUnit.symbols().contains(label)).toList();
		List<String> wanted = expected.isEmpty() ? Collections.emptyList() : List.of(expected.split(", "));
		assertEquals(wanted.stream().sorted().toList(), all.stream().sorted().toList());
	}

	private List<CompletionItem> offered(String name, String typed) throws Exception {
		Path file = shop.file(name);
		String text = typed.replace("|", "");
		editor.type(file, text);
		return editor.get(editor.server().getTextDocumentService().completion(
				new CompletionParams(Connection.document(file), Texts.start(typed, "|")))).getRight().getItems();
	}

	private static CompletionItem named(List<CompletionItem> items, String label) {
		return items.stream().filter(item -> item.getLabel().equals(label)).findFirst().orElseThrow();
	}
}
