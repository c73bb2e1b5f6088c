package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;

import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.xtext.ide.server.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** At no place of a document, however wrong it is, does a service fail. */
class EveryPlaceTest {

	/** Not a divisor of anything in particular, so that all kinds of places are met. */
	private static final int STRIDE = 7;
	private static final String IMPOSSIBLE = """
			unit mm
			stock Zero { material m { } pad P { thick 0 } film F m { 0.5 0 thou } feeler X 0 feeler Y 0.5 thou
				rule "x" warn when pad.thick < 0 mm and or }
			system Null based on Null { key A closes A, B cup 16 deep 0 key A key by hole change Q open remove Q
				note C : T T A }
			plan Nothing for Null with Zero { fit P on Q with F read at 12 12 3 13
				key A empty 0 0 felt . 0 . 0.5 shim 0 from 2 to 2 felt key A key Q stack mm key
				regulate A > : light
			""";

	@TempDir
	private Path folder;

	@Test
	void ofAPlanWithFindings() throws Exception {
		TestShop shop = TestShop.example(folder);
		assertAnswered(shop.file("plans/student-flute.plan"), shop.text("plans/student-flute.plan"));
	}

	@Test
	void ofWhatIsNoDocumentYet() throws Exception {
		TestShop shop = TestShop.empty(folder.resolve("shop"));
		for (String text : new String[] { "key", "\tke\n", "plan", "plan P for S {\n\tkey\n}", "}", "§ \" ½", "// x",
				"felt . ." }) {
			assertAnswered(shop.write("begun.plan", text), text);
		}
	}

	@Test
	void ofTextThatCannotBe() throws Exception {
		assertAnswered(TestShop.empty(folder.resolve("shop")).write("zero.plan", IMPOSSIBLE), IMPOSSIBLE);
	}

	private void assertAnswered(Path file, String text) throws Exception {
		try (Connection editor = Connection.open(file.getParent())) {
			TextDocumentService services = editor.server().getTextDocumentService();
			TextDocumentIdentifier id = Connection.document(file);
			Document document = new Document(1, text);
			List<CompletableFuture<?>> answers = new ArrayList<>();
			for (int offset = 0; offset <= text.length(); offset++) {
				Position place = document.getPosition(offset);
				answers.add(services.hover(new HoverParams(id, place)));
				if (offset % STRIDE == 0) {
					answers.add(services.completion(new CompletionParams(id, place)));
					answers.add(services.codeAction(new CodeActionParams(id, new Range(place, place),
							new CodeActionContext(List.of()))));
				}
			}
			Range all = new Range(new Position(0, 0), document.getPosition(text.length()));
			assertNotNull(editor.get(services.inlayHint(new InlayHintParams(id, all))));
			assertNotNull(editor.get(services.codeLens(new CodeLensParams(id))));
			assertNotNull(editor.get(services.semanticTokensFull(new SemanticTokensParams(id))));
			assertNotNull(editor.get(services.foldingRange(new FoldingRangeRequestParams(id))));
			assertNotNull(editor.get(services.documentSymbol(new DocumentSymbolParams(id))));
			for (Diagnostic finding : editor.client().diagnostics(Connection.uri(file), found -> true)) {
				answers.add(services.codeAction(new CodeActionParams(id, finding.getRange(),
						new CodeActionContext(List.of(finding)))));
			}
			editor.get(CompletableFuture.allOf(answers.toArray(CompletableFuture[]::new)));
		}
	}
}
