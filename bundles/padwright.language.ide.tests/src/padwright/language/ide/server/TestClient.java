package padwright.language.ide.server;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

import org.eclipse.lsp4j.ApplyWorkspaceEditParams;
import org.eclipse.lsp4j.ApplyWorkspaceEditResponse;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.WorkDoneProgressCreateParams;
import org.eclipse.lsp4j.WorkDoneProgressKind;
import org.eclipse.lsp4j.WorkDoneProgressNotification;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.services.LanguageClient;

/** The editor's side of a connection: remembers what the server tells it. */
class TestClient implements LanguageClient {

	private record Expectation(String uri, Predicate<List<Diagnostic>> wanted,
			CompletableFuture<List<Diagnostic>> met) {
	}

	private final Map<String, List<Diagnostic>> diagnostics = new HashMap<>();
	private final List<Expectation> expectations = new ArrayList<>();
	private final CompletableFuture<WorkspaceEdit> applied = new CompletableFuture<>();
	private final CompletableFuture<Void> refreshed = new CompletableFuture<>();
	private final CompletableFuture<List<Registration>> registered = new CompletableFuture<>();
	private final List<WorkDoneProgressNotification> progress = new ArrayList<>();
	private final CompletableFuture<List<WorkDoneProgressNotification>> finished = new CompletableFuture<>();

	@Override
	public synchronized void publishDiagnostics(PublishDiagnosticsParams published) {
		diagnostics.put(published.getUri(), published.getDiagnostics());
		expectations.stream().filter(expected -> expected.uri.equals(published.getUri()))
				.filter(expected -> expected.wanted.test(published.getDiagnostics()))
				.forEach(expected -> expected.met.complete(published.getDiagnostics()));
	}

	/** The diagnostics of a file, as soon as they are as wanted. */
	List<Diagnostic> diagnostics(String uri, Predicate<List<Diagnostic>> wanted) throws Exception {
		CompletableFuture<List<Diagnostic>> met = new CompletableFuture<>();
		synchronized (this) {
			expectations.add(new Expectation(uri, wanted, met));
			List<Diagnostic> known = diagnostics.get(uri);
			if (known != null && wanted.test(known)) {
				met.complete(known);
			}
		}
		return met.get(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS);
	}

	/** The diagnostics of a file as they were told last. */
	synchronized List<Diagnostic> known(String uri) {
		return diagnostics.getOrDefault(uri, List.of());
	}

	/** The first edit that the server asked the editor to make. */
	WorkspaceEdit applied() throws Exception {
		return applied.get(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS);
	}

	@Override
	public CompletableFuture<ApplyWorkspaceEditResponse> applyEdit(ApplyWorkspaceEditParams wanted) {
		applied.complete(wanted.getEdit());
		return CompletableFuture.completedFuture(new ApplyWorkspaceEditResponse(true));
	}

	/** Returns when the server has asked to fetch the hints again. */
	void awaitRefreshedHints() throws Exception {
		refreshed.get(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS);
	}

	@Override
	public CompletableFuture<Void> refreshInlayHints() {
		refreshed.complete(null);
		return CompletableFuture.completedFuture(null);
	}

	/** What the server first asked to be told of. */
	List<Registration> registered() throws Exception {
		return registered.get(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS);
	}

	@Override
	public CompletableFuture<Void> registerCapability(RegistrationParams asked) {
		registered.complete(asked.getRegistrations());
		return CompletableFuture.completedFuture(null);
	}

	/** All that was told of the first long work, once it has ended. */
	List<WorkDoneProgressNotification> progress() throws Exception {
		return finished.get(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS);
	}

	@Override
	public CompletableFuture<Void> createProgress(WorkDoneProgressCreateParams wanted) {
		return CompletableFuture.completedFuture(null);
	}

	@Override
	public synchronized void notifyProgress(ProgressParams told) {
		progress.add(told.getValue().getLeft());
		if (told.getValue().getLeft().getKind() == WorkDoneProgressKind.end) {
			finished.complete(List.copyOf(progress));
		}
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
}
