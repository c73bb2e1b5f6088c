package padwright.workbench.bench;

import java.util.Optional;
import java.util.function.BiConsumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

import padwright.workbench.Messages;
import padwright.workbench.session.Answers;
import padwright.workbench.session.LanguageSession;

/** Reads the plan or system of a document in the background; only the newest wish counts. */
final class Reading extends Job {

	private final BiConsumer<String, Optional<Workpiece>> onRead;
	private volatile String uri;
	private volatile int caret;

	/** @param onRead told, in a background thread, of what the document is about */
	Reading(BiConsumer<String, Optional<Workpiece>> onRead) {
		super(Messages.get("bench.reading"));
		this.onRead = onRead;
		setSystem(true);
		setPriority(SHORT);
	}

	void start(String ofUri, int atCaret) {
		uri = ofUri;
		caret = atCaret;
		schedule();
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		String read = uri;
		LanguageSession.get().running().flatMap(server -> Answers.await(() -> server.snapshot(read)))
				.ifPresent(document -> onRead.accept(read, Workpiece.of(read, document, caret)));
		return Status.OK_STATUS;
	}
}
