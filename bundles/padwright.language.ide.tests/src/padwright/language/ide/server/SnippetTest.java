package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.CompletionItemInsertTextModeSupportCapabilities;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.InsertTextMode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.ide.completion.Proposals;
import padwright.workup.checks.IssueCodes;

/** Whole rows and documents to fill in. */
class SnippetTest {

	private static final Set<String> ALL = labels();
	private static final String SYSTEM = """
			system Mini {
				key A cup 16 mm
				key B closes A cup 16 mm
				key ^head
			}
			""";
	private static final String PLAN = """
			plan Work for Mini with Bench {
				read at 12 3 6 9
				key A felt . . . .
				|
			}
			""";
	private static final List<String> PLACES = List.of("|", PLAN, "plan Work for Mini {\n|\n}",
			"plan Work for Mini with Bench {\n\tread at 12 3 6 9\n\tkey A empty 15 15 15 15 |\n}", "system S {\n\t|\n}",
			"system S based on Mini {\n\t|\n}", "system S {\n\tkey C |\n}", "stock S {\n\t|\n}",
			"stock S {\n\tmaterial felt { }\n\t|\n}");

	@TempDir
	private Path folder;
	private Path file;

	@BeforeEach
	void openShop() throws Exception {
		TestShop shop = TestShop.empty(folder.resolve("shop"));
		shop.write("mini.keys", SYSTEM);
		shop.write("bench.stock", "stock Bench { pad Soft { } pad Hard { } }");
		file = shop.file("typed.plan");
	}

	private static Set<String> labels() {
		var labels = padwright.workup.words.Texts.beside(Proposals.class, "snippets");
		Set<String> all = new HashSet<>();
		labels.keys().forEach(name -> assertTrue(all.add(labels.of(name)), name));
		return all;
	}

	/** Each somewhere, with its defaults as it stands. */
	@Test
	void everySnippetCanBeReadWhereItIsOffered() throws Exception {
		Set<String> seen = new HashSet<>();
		try (Connection editor = Connection.open(file.getParent())) {
			for (String place : PLACES) {
				for (CompletionItem item : snippets(editor, place)) {
					String text = place.replace("|", item.getTextEdit().getLeft().getNewText());
					editor.retype(file, text);
					editor.get(outline(editor));
					assertEquals(List.of(), editor.client().known(Connection.uri(file)).stream()
							.filter(SnippetTest::isUnreadable).toList(), text);
					seen.add(item.getLabel());
				}
			}
		}
		assertEquals(ALL, seen);
	}

	private CompletableFuture<?> outline(Connection editor) {
		return editor.server().getTextDocumentService()
				.documentSymbol(new DocumentSymbolParams(Connection.document(file)));
	}

	private static boolean isUnreadable(Diagnostic found) {
		return found.getCode().getLeft().equals(IssueCodes.SYNTAX);
	}

	@Test
	void stopsAreForThoseWhoKnowThem() throws Exception {
		try (Connection editor = Connection.able(stops(), file.getParent())) {
			CompletionItem row = named(editor, PLAN.replace("|", "k|"), "key with empty cup and feelers");
			assertEquals(InsertTextFormat.Snippet, row.getInsertTextFormat());
			assertEquals(InsertTextMode.AdjustIndentation, row.getInsertTextMode());
			assertEquals("key ${1|B,\"head\"|} empty ${2:15 15 15 15 15 15 15 15} felt ${3:. . . . . . . .}",
					row.getTextEdit().getLeft().getNewText());
			assertEquals("key B empty 15 15 15 15 15 15 15 15 felt . . . . . . . .", row.getDocumentation().getLeft());
		}
	}

	@Test
	void othersGetTheTextAloneIndentedAsTheLine() throws Exception {
		try (Connection editor = Connection.open(file.getParent())) {
			CompletionItem look = named(editor, "plan Work for Mini {\n\t  i|\n}", "inspect the instrument");
			assertEquals(InsertTextFormat.PlainText, look.getInsertTextFormat());
			assertNull(look.getInsertTextMode());
			assertEquals("inspect {\n\t  \tbuild professional\n",
					look.getTextEdit().getLeft().getNewText().split("(?<=\n)\t  \ttenon")[0]);
		}
	}

	@Test
	void shopGivesTheNamesAndTheDay() throws Exception {
		try (Connection editor = Connection.able(stops(), file.getParent())) {
			String text = named(editor, "|", "plan with serial, player and a first row").getTextEdit().getLeft()
					.getNewText();
			assertTrue(text.contains("for ${3:Mini} serial"), text);
			assertTrue(text.contains("with ${5:Bench} {"), text);
			assertTrue(text.matches("(?s).*date \\$\\{6:" + LocalDate.now().getYear() + "-\\d\\d-\\d\\d}.*"), text);
		}
	}

	@Test
	void onlyThoseThatBeginAsTypedAreOffered() throws Exception {
		try (Connection editor = Connection.open(file.getParent())) {
			assertEquals(List.of("regulate a coupling"),
					snippets(editor, PLAN.replace("|", "re|")).stream().map(CompletionItem::getLabel).toList());
			assertEquals(List.of(), snippets(editor, PLAN.replace("|", "regulate |")));
		}
	}

	private CompletionItem named(Connection editor, String typed, String label) throws Exception {
		return snippets(editor, typed).stream().filter(item -> item.getLabel().equals(label)).findFirst().orElseThrow();
	}

	private static Consumer<ClientCapabilities> stops() {
		CompletionItemCapabilities items = new CompletionItemCapabilities(true);
		items.setInsertTextModeSupport(
				new CompletionItemInsertTextModeSupportCapabilities(List.of(InsertTextMode.AdjustIndentation)));
		return client -> client.getTextDocument().setCompletion(new CompletionCapabilities(items));
	}

	private List<CompletionItem> snippets(Connection editor, String typed) throws Exception {
		editor.type(file, typed.replace("|", ""));
		CompletionParams caret = new CompletionParams(Connection.document(file), Texts.start(typed, "|"));
		return editor.get(editor.server().getTextDocumentService().completion(caret)).getRight().getItems().stream()
				.filter(item -> item.getKind() == CompletionItemKind.Snippet).toList();
	}
}
