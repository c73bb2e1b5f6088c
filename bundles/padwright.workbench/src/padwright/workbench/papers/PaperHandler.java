package padwright.workbench.papers;

import java.util.Locale;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.Messages;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.Workpiece;
import padwright.workbench.menus.AddedNames;
import padwright.workbench.questions.QuoteDialog;
import padwright.workbench.questions.QuoteTerms;
import padwright.workbench.session.StatusLine;

/** Draws a paper of what is on the bench and shows it. */
public final class PaperHandler extends AbstractHandler {

	private static final String KIND = "padwright.workbench.paper.kind";
	private static final String LAYOUT = "layout";
	private static final String QUOTE = "quote";

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		String kind = event.getParameter(KIND);
		Optional<QuoteTerms> terms = kind.equals(QUOTE) ? QuoteDialog.ask(HandlerUtil.getActiveShell(event))
				: Optional.of(QuoteTerms.PARTS);
		terms.ifPresent(known -> paper(kind, Bench.of(window).shown(), known, window.getActivePage())
				.ifPresentOrElse(PaperJob::schedule, () -> StatusLine.tell(Messages.get("papers.noPlan"), true)));
		return null;
	}

	private static Optional<PaperJob> paper(String kind, OnBench shown, QuoteTerms terms, IWorkbenchPage page) {
		Optional<String> added = AddedNames.of(kind);
		if (added.isPresent()) {
			return shown.plan().map(plan -> AddedPaperJob.of(added.get(), plan.service(), page));
		}
		return kind.equals(LAYOUT)
				? shown.work().flatMap(Workpiece::keySystem).map(system -> new LayoutJob(system, page))
				: shown.plan().map(plan -> new PlanPaperJob(PaperKind.valueOf(kind.toUpperCase(Locale.ROOT)),
						plan.service(), terms, page));
	}
}
