package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.WindowClientCapabilities;
import org.eclipse.lsp4j.WorkDoneProgressBegin;
import org.eclipse.lsp4j.WorkDoneProgressCancelParams;
import org.eclipse.lsp4j.WorkDoneProgressCreateParams;
import org.eclipse.lsp4j.WorkDoneProgressKind;
import org.eclipse.lsp4j.WorkDoneProgressNotification;
import org.eclipse.lsp4j.WorkDoneProgressReport;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A large shop takes a while to be read: the editor sees how long, and need not wait. */
class ProgressTest {

	private static final String LAST = "plans/last.plan";

	@TempDir
	private Path folder;
	private TestShop shop;

	@BeforeEach
	void writeLargeShop() throws Exception {
		shop = TestShop.empty(folder.resolve("archive"));
		shop.write("mini.keys", "system Mini {\n\tkey A\n}\n");
		for (int plan = 0; plan < ShopContents.MANY; plan++) {
			shop.write("plans/p" + plan + ".plan", "plan P" + plan + " for Mini {\n\tkey A\n}\n");
		}
		shop.write(LAST, "plan Last for Mini {\n\tkey Z\n}\n");
	}

	@Test
	void isToldFromBeginningToEnd() throws Exception {
		try (Connection editor = Connection.able(ProgressTest::showsProgress, shop.folder())) {
			List<WorkDoneProgressNotification> told = editor.client().progress();
			WorkDoneProgressBegin begin = (WorkDoneProgressBegin) told.get(0);
			assertEquals("Checking archive", begin.getTitle());
			assertTrue(begin.getCancellable());
			assertEquals(WorkDoneProgressKind.end, told.get(told.size() - 1).getKind());
		}
	}

	private static void showsProgress(ClientCapabilities client) {
		WindowClientCapabilities window = new WindowClientCapabilities();
		window.setWorkDoneProgress(true);
		client.setWindow(window);
	}

	@Test
	void growsByWholePercents() throws Exception {
		Told told = new Told(false);
		told.server.initialized(new InitializedParams());
		List<Integer> percents = told.progress().stream().filter(WorkDoneProgressReport.class::isInstance)
				.map(report -> ((WorkDoneProgressReport) report).getPercentage()).toList();
		assertEquals(percents.stream().distinct().sorted().toList(), percents);
		assertEquals(100, percents.get(percents.size() - 1));
		assertEquals(ShopContents.MANY + 2, told.judged.get());
		told.server.getRequestManager().shutdown();
	}

	/** The editor's wish comes with its first answer, so that the work has hardly begun. */
	@Test
	void stoppedItLeavesDocumentsUntilTheyAreOpened() throws Exception {
		Told told = new Told(true);
		told.server.initialized(new InitializedParams());
		assertEquals(WorkDoneProgressKind.end, told.progress().get(told.progress().size() - 1).getKind());
		told.read(shop.file(LAST));
		assertEquals(1, told.judged.get());
		told.server.didOpen(new DidOpenTextDocumentParams(
				new TextDocumentItem(Connection.uri(shop.file(LAST)), "padwright", 1, shop.text(LAST))));
		told.read(shop.file(LAST));
		assertEquals(List.of("link"), told.known(Connection.uri(shop.file(LAST))).stream()
				.map(found -> found.getCode().getLeft()).toList());
		told.server.getRequestManager().shutdown();
	}

	/** An editor within the server's program, whose answers come before the server goes on. */
	private final class Told extends TestClient {

		private final PadwrightLanguageServer server = ServerModule.newServer(new ClientSession());
		private final AtomicInteger judged = new AtomicInteger();
		private final boolean stops;

		Told(boolean stops) throws Exception {
			this.stops = stops;
			InitializeParams params = new InitializeParams();
			params.setWorkspaceFolders(List.of(new WorkspaceFolder(Connection.uri(shop.folder()), "archive")));
			params.setCapabilities(Connection.capabilities());
			showsProgress(params.getCapabilities());
			server.connect(this);
			server.initialize(params).get(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS);
		}

		@Override
		public CompletableFuture<Void> createProgress(WorkDoneProgressCreateParams wanted) {
			if (stops) {
				server.cancelProgress(new WorkDoneProgressCancelParams(wanted.getToken()));
			}
			return super.createProgress(wanted);
		}

		@Override
		public synchronized void publishDiagnostics(PublishDiagnosticsParams published) {
			judged.incrementAndGet();
			super.publishDiagnostics(published);
		}

		/** Returns when all that was asked before is done. */
		void read(Path file) throws Exception {
			server.documentSymbol(new DocumentSymbolParams(Connection.document(file)))
					.get(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS);
		}
	}
}
