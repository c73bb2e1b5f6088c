package padwright.benchmarks.scale;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;

import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.services.LanguageClient;

import padwright.language.ide.server.LocalServer;

/** Types into one plan while the language server has the whole archive open. */
final class ServerEdits implements LanguageClient {

	private static final int EDITS = 100;

	private final BlockingQueue<String> told = new LinkedBlockingQueue<>();

	private ServerEdits() {
	}

	/** Seconds of processor time from a change of an open plan until its findings are told. */
	static double measure(Path archive, List<Path> files) throws Exception {
		ServerEdits client = new ServerEdits();
		InitializeParams params = new InitializeParams();
		params.setCapabilities(new ClientCapabilities());
		params.setWorkspaceFolders(List.of(new WorkspaceFolder(LocalServer.uri(archive), "archive")));
		try (LocalServer server = LocalServer.start(params, client)) {
			return client.edits(server, files.get(files.size() / 4));
		}
	}

	private double edits(LocalServer server, Path plan) throws IOException, InterruptedException {
		String uri = LocalServer.uri(plan);
		String text = Files.readString(plan);
		server.documents().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "padwright", 1, text)));
		server.read(uri, opened -> true).join();
		double start = 0;
		for (int edit = 0; edit < 2 * EDITS; edit++) {
			// The first half warms up.
			start = edit == EDITS ? Cost.cpuSeconds() : start;
			edit(server, uri, edit, text);
		}
		return (Cost.cpuSeconds() - start) / EDITS;
	}

	private void edit(LocalServer server, String uri, int number, String text) throws InterruptedException {
		told.clear();
		String edited = text.replace("7.5 7.5", number % 2 == 0 ? "7.5 7" : "7.5 6.5");
		server.documents().didChange(new DidChangeTextDocumentParams(
				new VersionedTextDocumentIdentifier(uri, number + 2),
				List.of(new TextDocumentContentChangeEvent(edited))));
		while (!told.take().equals(uri)) {
			continue;
		}
		server.read(uri, changed -> true).join();
	}

	@Override
	public void publishDiagnostics(PublishDiagnosticsParams found) {
		told.add(found.getUri());
	}

	@Override
	public void telemetryEvent(Object ignored) {
		// Nothing is measured by the server itself.
	}

	@Override
	public void showMessage(MessageParams message) {
		System.err.println(message.getMessage());
	}

	@Override
	public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
		return CompletableFuture.completedFuture(null);
	}

	@Override
	public void logMessage(MessageParams message) {
		System.err.println(message.getMessage());
	}
}
