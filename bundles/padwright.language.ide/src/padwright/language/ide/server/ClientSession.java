package padwright.language.ide.server;

import java.util.concurrent.CompletableFuture;

import org.eclipse.xtext.ide.server.ILanguageServerShutdownAndExitHandler;

/** From the first message of a client to its last. The process is ended by who runs the server, not by the client. */
final class ClientSession implements ILanguageServerShutdownAndExitHandler {

	private final CompletableFuture<Void> end = new CompletableFuture<>();
	private volatile boolean shutDown;

	@Override
	public void shutdown() {
		shutDown = true;
	}

	@Override
	public void exit() {
		end.complete(null);
	}

	/** Returns when the client has gone; tells whether it has asked to shut down before, as it should. */
	boolean awaitEnd() {
		end.join();
		return shutDown;
	}
}
