package padwright.workbench.session;

import java.util.concurrent.CompletableFuture;

import org.eclipse.core.runtime.ILog;
import org.eclipse.lsp4j.ApplyWorkspaceEditParams;
import org.eclipse.lsp4j.ApplyWorkspaceEditResponse;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.ui.PlatformUI;

/** What the server asks and tells the workbench. */
final class EditorClient implements LanguageClient {

	private final FindingMarkers markers;

	EditorClient(FindingMarkers markers) {
		this.markers = markers;
	}

	@Override
	public void publishDiagnostics(PublishDiagnosticsParams findings) {
		markers.show(findings);
	}

	@Override
	public CompletableFuture<ApplyWorkspaceEditResponse> applyEdit(ApplyWorkspaceEditParams params) {
		return CompletableFuture.supplyAsync(
				() -> new ApplyWorkspaceEditResponse(WorkspaceEdits.apply(params.getLabel(), params.getEdit())),
				PlatformUI.getWorkbench().getDisplay()::asyncExec);
	}

	@Override
	public void showMessage(MessageParams message) {
		StatusLine.tell(message.getMessage(), message.getType() == MessageType.Error);
	}

	@Override
	public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
		showMessage(request);
		return CompletableFuture.completedFuture(null);
	}

	@Override
	public void logMessage(MessageParams message) {
		if (message.getType() == MessageType.Error) {
			ILog.of(EditorClient.class).error(message.getMessage());
		}
	}

	@Override
	public void telemetryEvent(Object event) {
		// Nothing is collected.
	}

	/** Views and hints follow the builds themselves. */
	@Override
	public CompletableFuture<Void> refreshInlayHints() {
		return CompletableFuture.completedFuture(null);
	}
}
