package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;

import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is thrown at the server, it answers what comes next. */
class RobustnessTest {

	private static final String SYSTEM = "system Mini {\n\tkey A\n\tkey B closes A\n}\n";

	@TempDir
	private Path folder;
	private Path keys;
	private Connection editor;

	@BeforeEach
	void openShop() throws Exception {
		TestShop shop = TestShop.empty(folder.resolve("shop"));
		keys = shop.write("mini.keys", SYSTEM);
		editor = Connection.open(shop.folder());
	}

	@AfterEach
	void close() throws Exception {
		editor.close();
	}

	@Test
	void cancelledRequestDoesNotDisturbTheNext() throws Exception {
		CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> asked = ask();
		asked.cancel(true);
		// The server's word that it was cancelled may come before our own side has noted it.
		RuntimeException cancelled = assertThrows(RuntimeException.class, asked::join);
		assertTrue(cancelled instanceof CancellationException || cancelled.getMessage().contains("has been cancelled"),
				cancelled::toString);
		assertAnswers();
	}

	@Test
	void changesWhileRenamingNeverBlock() throws Exception {
		editor.type(keys, SYSTEM);
		List<CompletableFuture<WorkspaceEdit>> renames = new ArrayList<>();
		for (int round = 0; round < 20; round++) {
			renames.add(editor.server().getTextDocumentService()
					.rename(new RenameParams(Connection.document(keys), new Position(1, 5), "As")));
			editor.retype(keys, SYSTEM + " ".repeat(round));
		}
		for (CompletableFuture<WorkspaceEdit> rename : renames) {
			CompletableFuture<Boolean> settled = rename.handle((edit, failure) -> true);
			assertTrue(editor.get(settled));
		}
		assertAnswers();
	}

	@Test
	void deeplyNestedTextIsSurvived() throws Exception {
		Path stock = folder.resolve("shop").resolve("deep.stock");
		editor.type(stock, "stock Deep { rule \"x\" warn when " + "(".repeat(100_000));
		editor.retype(keys, SYSTEM);
		editor.type(keys, SYSTEM.replace("closes A", "closes Z"));
		editor.client().diagnostics(Connection.uri(keys), found -> !found.isEmpty());
		assertAnswers();
	}

	@Test
	void textInNoShopIsRefusedInWords() throws Exception {
		HoverParams params = new HoverParams(new TextDocumentIdentifier("memory:/new.plan"), new Position(0, 0));
		ExecutionException refused = assertThrows(ExecutionException.class,
				() -> editor.get(editor.server().getTextDocumentService().hover(params)));
		assertTrue(refused.getMessage().contains("save it first"), refused.getMessage());
		assertAnswers();
	}

	private void assertAnswers() throws Exception {
		assertNotNull(editor.get(ask()));
	}

	private CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> ask() {
		return editor.server().getTextDocumentService()
				.documentSymbol(new DocumentSymbolParams(Connection.document(keys)));
	}
}
