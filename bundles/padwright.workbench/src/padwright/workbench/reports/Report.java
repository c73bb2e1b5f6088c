package padwright.workbench.reports;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

import padwright.commands.PadwrightApplication;
import padwright.workbench.Messages;
import padwright.workbench.shops.OpenShops;
import padwright.workup.words.Texts;

/**
 * What a command of the command line answers.
 *
 * @param command its name
 * @param subject the file or folder it was asked about
 * @param text results and messages, as they would stand in a terminal
 */
record Report(String command, Path subject, String text) {

	/**
	 * Carries a command out. It reads what is saved, and answers in English, as commands do.
	 *
	 * @param options behind the subject
	 */
	static Report of(String command, Path subject, List<String> options) {
		ByteArrayOutputStream results = new ByteArrayOutputStream();
		PrintStream out = new PrintStream(results, true, StandardCharsets.UTF_8);
		List<String> arguments = new ArrayList<>(List.of(command, subject.toString()));
		arguments.addAll(options);
		Texts.in(Locale.ENGLISH, () -> PadwrightApplication.run(arguments, out, out));
		return new Report(command, subject, results.toString(StandardCharsets.UTF_8));
	}

	/** Carries a command out in the background and shows the answer in the window; then looks for files it wrote. */
	static void show(String command, Path subject, List<String> options, IWorkbenchPage page)
			throws ExecutionException {
		try {
			ReportView view = (ReportView) page.showView(ReportView.ID);
			Job.create(Messages.get("report.job", command), (ICoreRunnable) monitor -> {
				Report report = of(command, subject, options);
				OpenShops.project().refreshLocal(IResource.DEPTH_INFINITE, monitor);
				view.getSite().getShell().getDisplay().asyncExec(() -> view.show(report));
			}).schedule();
		} catch (PartInitException unopened) {
			throw new ExecutionException(unopened.getMessage(), unopened);
		}
	}
}
