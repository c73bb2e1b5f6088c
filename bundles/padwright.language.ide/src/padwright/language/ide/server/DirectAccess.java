package padwright.language.ide.server;

import java.util.concurrent.CompletableFuture;
import java.util.function.Function;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.xtext.ide.server.ILanguageServerAccess;

/**
 * Reads at once instead of queueing. A service that waits, inside one read, for a second read that is queued behind a
 * change would wait for ever, since the change waits for the first.
 */
final class DirectAccess implements ILanguageServerAccess {

	private final ILanguageServerAccess queueing;

	DirectAccess(ILanguageServerAccess queueing) {
		this.queueing = queueing;
	}

	@Override
	public <T> CompletableFuture<T> doRead(String uri, Function<Context, T> reading) {
		return CompletableFuture.completedFuture(doSyncRead(uri, reading));
	}

	@Override
	public <T> T doSyncRead(String uri, Function<Context, T> reading) {
		return queueing.doSyncRead(uri, reading);
	}

	@Override
	public <T> CompletableFuture<T> doReadIndex(Function<? super IndexContext, ? extends T> reading) {
		throw new UnsupportedOperationException("the index is read in a request of its own");
	}

	@Override
	public void addBuildListener(IBuildListener listener) {
		queueing.addBuildListener(listener);
	}

	@Override
	public LanguageClient getLanguageClient() {
		return queueing.getLanguageClient();
	}

	@Override
	public ResourceSet newLiveScopeResourceSet(URI uri) {
		return queueing.newLiveScopeResourceSet(uri);
	}

	@Override
	public InitializeParams getInitializeParams() {
		return queueing.getInitializeParams();
	}

	@Override
	public InitializeResult getInitializeResult() {
		return queueing.getInitializeResult();
	}
}
