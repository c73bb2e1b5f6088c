package padwright.workbench.papers;

import java.util.Locale;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

import padwright.paper.page.PaperSize;
import padwright.workbench.Messages;
import padwright.workbench.session.StatusLine;

/** Draws a paper in the background, in the language of the window; then opens it. */
abstract class PaperJob extends Job {

	private final IWorkbenchPage page;

	PaperJob(String name, IWorkbenchPage page) {
		super(name);
		this.page = page;
	}

	/**
	 * Draws the paper.
	 *
	 * @throws IllegalArgumentException in the user's words, if it cannot be drawn
	 * @throws OperationCanceledException if {@code monitor} says that nobody wants it any more
	 */
	protected abstract Pages draw(PaperSize size, IProgressMonitor monitor);

	@Override
	protected final IStatus run(IProgressMonitor monitor) {
		try {
			Pages pages = draw(usualSize(), monitor);
			page.getWorkbenchWindow().getShell().getDisplay().asyncExec(() -> open(pages));
			return Status.OK_STATUS;
		} catch (OperationCanceledException cancelled) {
			return Status.CANCEL_STATUS;
		} catch (IllegalArgumentException notDrawable) {
			StatusLine.tell(Messages.get("papers.failed", getName(), notDrawable.getMessage()), true);
			return Status.OK_STATUS;
		}
	}

	/** Letter where that is the usual paper, A4 everywhere else. */
	private static PaperSize usualSize() {
		return switch (Locale.getDefault().getCountry()) {
			case "US", "CA", "MX", "PH", "CL", "CO", "VE" -> PaperSize.LETTER;
			default -> PaperSize.A4;
		};
	}

	private void open(Pages pages) {
		try {
			page.openEditor(new PagesInput(pages), PagesEditor.ID);
		} catch (PartInitException unopened) {
			ILog.of(PaperJob.class).log(unopened.getStatus());
		}
	}
}
