package padwright.language.ide.server;

import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.WorkDoneProgressBegin;
import org.eclipse.lsp4j.WorkDoneProgressCreateParams;
import org.eclipse.lsp4j.WorkDoneProgressEnd;
import org.eclipse.lsp4j.WorkDoneProgressNotification;
import org.eclipse.lsp4j.WorkDoneProgressReport;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;

/** How far one piece of long work has come, told to the client as soon as it agreed to be told, in whole percents. */
final class WorkProgress implements AutoCloseable {

	private static final int WHOLE = 100;

	private final LanguageClient client;
	private final String token;
	private final int steps;
	private final Runnable atTheEnd;
	private int done;
	private int told;
	private boolean agreed;
	private boolean ended;
	private volatile boolean stopped;

	/**
	 * @param steps above 0
	 * @param atTheEnd what is done at its end
	 */
	WorkProgress(LanguageClient client, String token, int steps, Runnable atTheEnd) {
		this.client = client;
		this.token = token;
		this.steps = steps;
		this.atTheEnd = atTheEnd;
	}

	/** Asks the client whether it wants to be told, and goes on meanwhile. */
	void begin(String title) {
		client.createProgress(new WorkDoneProgressCreateParams(Either.forLeft(token))).thenRun(() -> agree(title));
	}

	private synchronized void agree(String title) {
		agreed = true;
		told = percentage();
		WorkDoneProgressBegin begin = new WorkDoneProgressBegin();
		begin.setTitle(title);
		begin.setCancellable(true);
		begin.setPercentage(told);
		tell(begin);
		if (ended) {
			tell(new WorkDoneProgressEnd());
		}
	}

	/** The client does not want to wait any longer. */
	void stop() {
		stopped = true;
	}

	boolean isStopped() {
		return stopped;
	}

	/** One step is done. */
	synchronized void step(String what) {
		done++;
		if (agreed && percentage() > told) {
			told = percentage();
			WorkDoneProgressReport report = new WorkDoneProgressReport();
			report.setMessage(what);
			report.setPercentage(told);
			report.setCancellable(true);
			tell(report);
		}
	}

	@Override
	public synchronized void close() {
		ended = true;
		atTheEnd.run();
		if (agreed) {
			tell(new WorkDoneProgressEnd());
		}
	}

	private int percentage() {
		return Math.min(WHOLE, (int) ((long) WHOLE * done / steps));
	}

	private void tell(WorkDoneProgressNotification news) {
		client.notifyProgress(new ProgressParams(Either.forLeft(token), Either.forLeft(news)));
	}
}
