package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.channels.Channels;
import java.nio.channels.Pipe;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server as an editor starts it: over the standard streams of the command line. */
class ServeCommandTest {

	private static final int PATIENCE_SECONDS = 60;

	private final InputStream in = System.in;
	private final PrintStream out = System.out;
	private final PrintStream err = System.err;
	private final ByteArrayOutputStream messages = new ByteArrayOutputStream();
	private final CompletableFuture<String> firstFindings = new CompletableFuture<>();
	@TempDir
	private Path folder;
	private OutputStream toServer;
	private LanguageServer server;
	private PrintStream protocol;
	private CompletableFuture<Integer> status;

	@BeforeEach
	void serve() throws Exception {
		ExampleShop shop = ExampleShop.copiedTo(folder);
		Pipe up = Pipe.open();
		Pipe down = Pipe.open();
		toServer = Channels.newOutputStream(up.sink());
		protocol = new PrintStream(Channels.newOutputStream(down.sink()), true);
		System.setIn(Channels.newInputStream(up.source()));
		System.setOut(protocol);
		System.setErr(new PrintStream(messages, true, StandardCharsets.UTF_8));
		status = CompletableFuture.supplyAsync(() -> Main.run(List.of("serve"), System.out, System.err), task -> new Thread(task).start());
		var launcher = LSPLauncher.createClientLauncher(client(), Channels.newInputStream(down.source()), toServer);
		launcher.startListening();
		server = launcher.getRemoteProxy();
		assertNotNull(get(server.initialize(parameters(shop))).getCapabilities().getInlayHintProvider());
		server.initialized(new InitializedParams());
	}

	@AfterEach
	void putStreamsBack() throws Exception {
		toServer.close();
		get(status);
		System.setIn(in);
		System.setOut(out);
		System.setErr(err);
	}

	private static InitializeParams parameters(ExampleShop shop) {
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(shop.folder().toUri().toString(), "shop")));
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		params.setCapabilities(new ClientCapabilities(workspace, null, null));
		return params;
	}

	@Test
	void tellsFindingsAndEndsWithZeroAfterAGoodbye() throws Exception {
		assertTrue(get(firstFindings).startsWith("file:///"));
		get(server.shutdown());
		server.exit();
		assertEquals(ExitStatus.CLEAN, get(status));
		assertSame(protocol, System.out);
	}

	@Test
	void endsWithOneWhenTheEditorHangsUp() throws Exception {
		toServer.close();
		assertEquals(ExitStatus.FINDINGS, get(status));
	}

	@Test
	void whatOthersPrintStaysOutOfTheProtocol() throws Exception {
		System.out.println("a library talks");
		get(server.shutdown());
		server.exit();
		get(status);
		assertTrue(messages.toString(StandardCharsets.UTF_8).contains("a library talks"));
	}

	private static <T> T get(CompletableFuture<T> answer) throws Exception {
		return answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
	}

	private LanguageClient client() {
		return new LanguageClient() {
			@Override
			public void publishDiagnostics(PublishDiagnosticsParams published) {
				firstFindings.complete(published.getUri());
			}

			@Override
			public void telemetryEvent(Object event) {
				// Nothing is measured.
			}

			@Override
			public void showMessage(MessageParams message) {
				// Nobody looks.
			}

			@Override
			public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
				return CompletableFuture.completedFuture(null);
			}

			@Override
			public void logMessage(MessageParams message) {
				// Nobody looks.
			}
		};
	}
}
