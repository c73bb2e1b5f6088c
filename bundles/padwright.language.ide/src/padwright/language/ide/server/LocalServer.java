package padwright.language.ide.server;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;
import org.eclipse.xtext.ide.server.ILanguageServerAccess.Context;
import org.eclipse.xtext.ide.server.ILanguageServerAccess.IBuildListener;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.resource.XtextResource;

/** The language server within the program of its client: the same services, without streams and messages between. */
public final class LocalServer implements AutoCloseable {

	private static final int PATIENCE_SECONDS = 5;

	private final PadwrightLanguageServer server = ServerModule.newServer(new ClientSession());

	private ServerCapabilities capabilities;

	private LocalServer() {
	}

	/** Serves {@code client}, who is asked at once; its shops are read in the background. */
	public static LocalServer start(InitializeParams params, LanguageClient client) {
		LocalServer local = new LocalServer();
		local.server.connect(client);
		local.capabilities = local.server.initialize(params).join().getCapabilities();
		local.server.initialized(new InitializedParams());
		return local;
	}

	/** What the server said that it can do. */
	public ServerCapabilities capabilities() {
		return capabilities;
	}

	public TextDocumentService documents() {
		return server.getTextDocumentService();
	}

	public WorkspaceService workspace() {
		return server.getWorkspaceService();
	}

	/** The form in which the server knows a file. */
	public static String uri(Path file) {
		return FileUris.text(file);
	}

	/** Tells {@code listener} of every document that was read anew. */
	public void addBuildListener(IBuildListener listener) {
		server.getLanguageServerAccess().addBuildListener(listener);
	}

	/** Reads a document, once all changes made so far are in; cancelled by the next change. */
	public <T> CompletableFuture<T> read(String uri, Function<Context, T> reading) {
		return server.getLanguageServerAccess().doRead(uri, reading);
	}

	/**
	 * Reads a document as it is now, with all it refers to, into a model of the caller's own: later changes do not touch
	 * it. Unsaved texts count. Cancelled by the next change.
	 */
	public CompletableFuture<XtextResource> snapshot(String uri) {
		return read(uri, context -> {
			URI document = context.getResource().getURI();
			XtextResource copy = (XtextResource) server.getLanguageServerAccess().newLiveScopeResourceSet(document)
					.getResource(document, true);
			EcoreUtil.resolveAll(copy);
			return copy;
		});
	}

	/** Reads a text that is in no shop, such as an older state of a document; nothing is linked. */
	public IParseResult parse(String text) {
		return server.parse(text);
	}

	/** Ends all work of the server. */
	@Override
	public void close() {
		try {
			server.shutdown().get(PATIENCE_SECONDS, TimeUnit.SECONDS);
		} catch (InterruptedException | ExecutionException | TimeoutException stillBusy) {
			// It holds nothing that a user could lose.
		} finally {
			server.getRequestManager().shutdown();
		}
	}
}
