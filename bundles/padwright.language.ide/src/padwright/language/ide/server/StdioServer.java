package padwright.language.ide.server;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;

/** The language over a pair of streams, for any editor that speaks the Language Server Protocol. */
public final class StdioServer {

	private StdioServer() {
	}

	/**
	 * Serves one client until it says goodbye or closes its stream. The program is for this client alone: it speaks the
	 * language that the client asks for, or else goes on as before.
	 *
	 * @return whether the client asked to shut down before it went
	 */
	public static boolean serve(InputStream in, OutputStream out) {
		ClientSession session = new ClientSession();
		PadwrightLanguageServer server = ServerModule.newServer(session);
		server.speakAsItsClient();
		ExecutorService readers = Executors.newCachedThreadPool(StdioServer::daemon);
		try {
			var launcher = new LSPLauncher.Builder<LanguageClient>().setLocalService(server)
					.setRemoteInterface(LanguageClient.class).setInput(new BoundedMessages(in)).setOutput(out)
					.setExecutorService(readers).create();
			server.connect(launcher.getRemoteProxy());
			endWith(launcher.startListening(), session, readers);
			return session.awaitEnd();
		} finally {
			server.getRequestManager().shutdown();
			readers.shutdown();
		}
	}

	/** A client that closes its stream has gone too. */
	private static void endWith(Future<Void> listening, ClientSession session, ExecutorService readers) {
		readers.execute(() -> {
			try {
				listening.get();
			} catch (Exception brokenPipe) {
				// As good as closed.
			} finally {
				session.exit();
			}
		});
	}

	/** A blocked read cannot be interrupted; it must not keep the process alive. */
	private static Thread daemon(Runnable task) {
		Thread thread = new Thread(task, "padwright-serve");
		thread.setDaemon(true);
		return thread;
	}
}
