package padwright.language.ide.server;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.Pipe;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DocumentSymbolCapabilities;
import org.eclipse.lsp4j.ExecuteCommandCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.InlayHintWorkspaceCapabilities;
import org.eclipse.lsp4j.RenameCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageServer;

/** An editor connected to a server over two pipes of the operating system, as over standard input and output. */
final class Connection implements AutoCloseable {

	/** Far longer than anything takes, so that only a hang fails. */
	static final int PATIENCE_SECONDS = 60;

	private final TestClient client = new TestClient();
	private final OutputStream toServer;
	private final CompletableFuture<Boolean> served;
	private final LanguageServer server;
	private InitializeResult initialized;
	private int version = 1;

	private Connection() throws IOException {
		Pipe up = Pipe.open();
		Pipe down = Pipe.open();
		toServer = Channels.newOutputStream(up.sink());
		served = CompletableFuture.supplyAsync(() -> StdioServer.serve(Channels.newInputStream(up.source()),
				Channels.newOutputStream(down.sink())), task -> new Thread(task, "server under test").start());
		var launcher = LSPLauncher.createClientLauncher(client, Channels.newInputStream(down.source()), toServer);
		launcher.startListening();
		server = launcher.getRemoteProxy();
	}

	/** From an editor that can do next to nothing, and has no folder open. */
	static Connection plain() throws Exception {
		return with(new InitializeParams());
	}

	/** With these folders open. */
	static Connection open(Path... folders) throws Exception {
		return open(capabilities -> {
		}, null, folders);
	}

	/** With these folders open, from an editor that can do more than most of our tests ask of one. */
	static Connection able(Consumer<ClientCapabilities> more, Path... folders) throws Exception {
		return open(more, null, folders);
	}

	/** With these folders open, from an editor in a language. */
	static Connection speaking(String language, Path... folders) throws Exception {
		return open(capabilities -> {
		}, language, folders);
	}

	private static Connection open(Consumer<ClientCapabilities> more, String language, Path... folders)
			throws Exception {
		InitializeParams params = new InitializeParams();
		params.setLocale(language);
		params.setWorkspaceFolders(Arrays.stream(folders)
				.map(folder -> new WorkspaceFolder(uri(folder), folder.getFileName().toString())).toList());
		params.setCapabilities(capabilities());
		more.accept(params.getCapabilities());
		return with(params);
	}

	private static Connection with(InitializeParams params) throws Exception {
		Connection connection = new Connection();
		connection.initialized = connection.get(connection.server.initialize(params));
		connection.server.initialized(new InitializedParams());
		return connection;
	}

	static ClientCapabilities capabilities() {
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		workspace.setInlayHint(new InlayHintWorkspaceCapabilities(true));
		workspace.setExecuteCommand(new ExecuteCommandCapabilities());
		TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
		DocumentSymbolCapabilities symbols = new DocumentSymbolCapabilities();
		symbols.setHierarchicalDocumentSymbolSupport(true);
		text.setDocumentSymbol(symbols);
		text.setRename(new RenameCapabilities(true, false));
		return new ClientCapabilities(workspace, text, null);
	}

	static String uri(Path file) {
		return file.toUri().toString();
	}

	static TextDocumentIdentifier document(Path file) {
		return new TextDocumentIdentifier(uri(file));
	}

	LanguageServer server() {
		return server;
	}

	TestClient client() {
		return client;
	}

	InitializeResult initialized() {
		return initialized;
	}

	void type(Path file, String text) {
		server.getTextDocumentService()
				.didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri(file), "padwright", version, text)));
	}

	void retype(Path file, String text) {
		version++;
		server.getTextDocumentService().didChange(new DidChangeTextDocumentParams(
				new VersionedTextDocumentIdentifier(uri(file), version),
				List.of(new TextDocumentContentChangeEvent(text))));
	}

	<T> T get(CompletableFuture<T> answer) throws Exception {
		return answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
	}

	/** Says goodbye in order; tells whether the server took it so. */
	boolean sayGoodbye() throws Exception {
		get(server.shutdown());
		server.exit();
		return get(served);
	}

	/** Drops the line; tells whether the server took it for a goodbye in order. */
	boolean hangUp() throws Exception {
		toServer.close();
		return get(served);
	}

	@Override
	public void close() throws Exception {
		hangUp();
	}
}
