package padwright.workbench.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.DocumentSymbolCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InlayHintWorkspaceCapabilities;
import org.eclipse.lsp4j.RenameCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceFoldersChangeEvent;

import padwright.language.ide.server.LocalServer;
import padwright.workbench.Messages;
import padwright.workup.extensions.Extensions;

/** The one language server of the workbench, and what keeps it informed of texts and files. */
public final class LanguageSession implements AutoCloseable {

	private static final LanguageSession ONLY = new LanguageSession();

	private final CompletableFuture<LocalServer> server = new CompletableFuture<>();
	private final FindingMarkers markers = new FindingMarkers();
	private final Builds builds = new Builds();
	private BufferWatcher buffers;
	private DiskWatcher disk;

	private LanguageSession() {
	}

	public static LanguageSession get() {
		return ONLY;
	}

	/** Starts the server in the background, so that the window does not wait for it. */
	public void start() {
		Job start = Job.createSystem(Messages.get("session.start"),
				(ICoreRunnable) monitor -> completeWith(server, this::started));
		start.setPriority(Job.SHORT);
		start.schedule();
	}

	private LocalServer started() {
		Extensions.installed().onLeftOut(left -> {
			ILog.of(LanguageSession.class).warn(left.inWords());
			StatusLine.tell(left.inWords(), true);
		});
		LocalServer started = LocalServer.start(initializeParams(), new EditorClient(markers));
		started.addBuildListener(builds);
		buffers = new BufferWatcher(started);
		disk = new DiskWatcher(started);
		buffers.start();
		disk.start();
		return started;
	}

	/**
	 * Tells whoever waits for something that it is there, or that it never will be.
	 *
	 * @throws CoreException if it could not be had, for the log
	 */
	static <T> void completeWith(CompletableFuture<T> waitedFor, Callable<T> work) throws CoreException {
		try {
			waitedFor.complete(work.call());
		} catch (Exception | LinkageError failed) {
			waitedFor.completeExceptionally(failed);
			StatusLine.tell(Messages.get("session.failed"), true);
			throw new CoreException(Status.error(Messages.get("session.failed"), failed));
		}
	}

	/** The server once it runs. */
	public CompletableFuture<LocalServer> server() {
		return server;
	}

	/** The server, if it runs already. */
	public Optional<LocalServer> running() {
		return server.isCompletedExceptionally() ? Optional.empty() : Optional.ofNullable(server.getNow(null));
	}

	/** Who is told when documents were read anew. */
	public Builds builds() {
		return builds;
	}

	/** Tells the server of a shop folder that is open from now on. */
	public void opened(Path shop) {
		foldersChanged(List.of(folder(shop)), List.of());
	}

	/** Tells the server that a shop folder is no longer open. */
	public void closed(Path shop) {
		foldersChanged(List.of(), List.of(folder(shop)));
	}

	/** Has findings and hints told anew, as lengths are to be shown from now on. */
	public void judgeAnew() {
		server.thenAccept(running -> running.workspace()
				.didChangeConfiguration(new DidChangeConfigurationParams(Map.of())));
	}

	private void foldersChanged(List<WorkspaceFolder> opened, List<WorkspaceFolder> closed) {
		server.thenAccept(running -> running.workspace().didChangeWorkspaceFolders(
				new DidChangeWorkspaceFoldersParams(new WorkspaceFoldersChangeEvent(opened, closed))));
	}

	private static WorkspaceFolder folder(Path shop) {
		return new WorkspaceFolder(LocalServer.uri(shop), shop.getFileName().toString());
	}

	private static InitializeParams initializeParams() {
		InitializeParams params = new InitializeParams();
		params.setWorkspaceFolders(OpenShops.folders().stream().map(LanguageSession::folder).toList());
		WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
		workspace.setWorkspaceFolders(true);
		workspace.setInlayHint(new InlayHintWorkspaceCapabilities(true));
		TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
		DocumentSymbolCapabilities symbols = new DocumentSymbolCapabilities();
		symbols.setHierarchicalDocumentSymbolSupport(true);
		text.setDocumentSymbol(symbols);
		text.setRename(new RenameCapabilities(true, false));
		text.setCompletion(new CompletionCapabilities(new CompletionItemCapabilities(true)));
		params.setCapabilities(new ClientCapabilities(workspace, text, null));
		return params;
	}

	@Override
	public void close() {
		running().ifPresent(started -> {
			buffers.stop();
			disk.stop();
			started.close();
		});
	}
}
