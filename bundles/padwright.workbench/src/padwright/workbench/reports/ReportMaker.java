package padwright.workbench.reports;

import org.eclipse.core.runtime.IProgressMonitor;

/** Makes a report from the texts as they are now, saved or not. */
@FunctionalInterface
interface ReportMaker {

	/**
	 * Not for the window's thread.
	 *
	 * @throws IllegalArgumentException in the user's words, if there is nothing to tell
	 */
	Made make(IProgressMonitor monitor);
}
