package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;

import org.eclipse.lsp4j.ApplyWorkspaceEditParams;
import org.eclipse.lsp4j.ApplyWorkspaceEditResponse;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an editor does not want any more is not done. */
class CancellationTest {

	private final PadwrightLanguageServer server = ServerModule.newServer(new ClientSession());
	private final SlowClient client = new SlowClient();
	@TempDir
	private Path folder;
	private TestShop shop;
	private Path plan;

	@BeforeEach
	void openShop() throws Exception {
		shop = TestShop.example(folder);
		plan = shop.file("plans/first.plan");
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(Connection.uri(folder), "shop")));
		params.setCapabilities(Connection.capabilities());
		server.connect(client);
		get(server.initialize(params));
		server.initialized(new InitializedParams());
	}

	@AfterEach
	void close() {
		client.free.countDown();
		server.getRequestManager().shutdown();
	}

	/** The server is held up while it tells of the text typed last, so that the request is surely still waiting. */
	@Test
	void aRequestThatStillWaitsIsNotDone() throws Exception {
		ExecuteCommandParams solve = solve();
		client.slow = true;
		server.didOpen(new DidOpenTextDocumentParams(
				new TextDocumentItem(Connection.uri(plan), "padwright", 1, shop.text("plans/first.plan"))));
		assertTrue(client.held.await(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS));
		CompletableFuture<Object> asked = server.executeCommand(solve);
		asked.cancel(true);
		client.free.countDown();
		assertThrows(CancellationException.class, asked::join);
		solve();
		assertEquals(List.of(), client.edits);
		get(server.executeCommand(solve));
		assertEquals(1, client.edits.size());
	}

	@Test
	void aRequestThatAChangeOvertakesIsToldSo() throws Exception {
		client.slow = true;
		server.didOpen(new DidOpenTextDocumentParams(
				new TextDocumentItem(Connection.uri(plan), "padwright", 1, shop.text("plans/first.plan"))));
		assertTrue(client.held.await(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS));
		CompletableFuture<?> asked = server.codeLens(new CodeLensParams(Connection.document(plan)));
		server.didChange(new DidChangeTextDocumentParams(new VersionedTextDocumentIdentifier(Connection.uri(plan), 2),
				List.of(new TextDocumentContentChangeEvent(shop.text("plans/first.plan") + "\n"))));
		client.free.countDown();
		ExecutionException overtaken = assertThrows(ExecutionException.class, () -> get(asked));
		assertEquals(ResponseErrorCode.ContentModified.getValue(),
				((ResponseErrorException) overtaken.getCause()).getResponseError().getCode());
	}

	private ExecuteCommandParams solve() throws Exception {
		var lens = get(server.codeLens(new CodeLensParams(Connection.document(plan)))).get(0);
		return new ExecuteCommandParams(lens.getCommand().getCommand(), lens.getCommand().getArguments());
	}

	private static <T> T get(CompletableFuture<T> answer) throws Exception {
		return answer.get(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS);
	}

	/** Within the server's program; takes its time with findings once it is slow. */
	private static final class SlowClient extends TestClient {

		private final CountDownLatch held = new CountDownLatch(1);
		private final CountDownLatch free = new CountDownLatch(1);
		private final List<ApplyWorkspaceEditParams> edits = new ArrayList<>();
		private volatile boolean slow;

		@Override
		public synchronized void publishDiagnostics(PublishDiagnosticsParams published) {
			if (slow) {
				held.countDown();
				awaitFree();
			}
		}

		private void awaitFree() {
			try {
				free.await(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS);
			} catch (InterruptedException stopped) {
				Thread.currentThread().interrupt();
			}
		}

		@Override
		public CompletableFuture<ApplyWorkspaceEditResponse> applyEdit(ApplyWorkspaceEditParams wanted) {
			edits.add(wanted);
			return super.applyEdit(wanted);
		}
	}
}
