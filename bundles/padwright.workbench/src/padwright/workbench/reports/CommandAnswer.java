package padwright.workbench.reports;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;

import padwright.commands.Main;
import padwright.workbench.Messages;
import padwright.workbench.session.OpenShops;
import padwright.workbench.session.StatusLine;

/**
 * What a command of the command line answers.
 *
 * @param status 0 where all is well
 * @param text results and messages, as they would stand in a terminal
 */
record CommandAnswer(int status, String text) {

	/**
	 * Carries a command out, which reads what is saved.
	 *
	 * @param options behind the subject
	 */
	static CommandAnswer of(String command, Path subject, List<String> options) {
		ByteArrayOutputStream results = new ByteArrayOutputStream();
		PrintStream out = new PrintStream(results, true, StandardCharsets.UTF_8);
		List<String> arguments = new ArrayList<>(List.of(command, subject.toString()));
		arguments.addAll(options);
		int status = Main.run(arguments, out, out);
		return new CommandAnswer(status, results.toString(StandardCharsets.UTF_8));
	}

	/** Carries a command out in the background and tells what it said; then looks for files it wrote. */
	static void carryOut(String command, Path subject, List<String> options) {
		Job.create(Messages.get("report.job", command), (ICoreRunnable) monitor -> {
			CommandAnswer answer = of(command, subject, options);
			OpenShops.project().refreshLocal(IResource.DEPTH_INFINITE, monitor);
			StatusLine.tell(answer.text().isBlank() ? Messages.get("report.done", subject.getFileName())
					: answer.text().strip().replaceAll("\\s+", " "), answer.status() != 0);
		}).schedule();
	}
}
