package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.language.shop.ShopFolder;
import padwright.workbench.Messages;
import padwright.workbench.editor.PlanEditor;
import padwright.workbench.menus.AddedNames;
import padwright.workbench.questions.QuoteDialog;
import padwright.workbench.safe.OnDisk;
import padwright.workbench.session.StatusLine;

/** Makes a report about the plan in the editor, or about the shop it belongs to, asking first for what it needs. */
public final class ReportHandler extends AbstractHandler {

	private static final String KIND = "padwright.workbench.report.command";

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindow(event).getActivePage();
		Optional<Path> plan = page.getActiveEditor() instanceof PlanEditor editor
				? OnDisk.path(editor.getEditorInput().getAdapter(IFile.class)) : Optional.empty();
		if (plan.isEmpty()) {
			StatusLine.tell(Messages.get("papers.noPlan"), true);
			return null;
		}
		Optional<ReportMaker> maker = maker(event.getParameter(KIND), plan.get(), HandlerUtil.getActiveShell(event));
		if (maker.isPresent()) {
			open(maker.get(), page);
		}
		return null;
	}

	static void open(ReportMaker maker, IWorkbenchPage page) throws ExecutionException {
		try {
			ReportView.open(maker, page);
		} catch (PartInitException unopened) {
			throw new ExecutionException(unopened.getMessage(), unopened);
		}
	}

	/** Nothing where the user gave up. */
	private static Optional<ReportMaker> maker(String kind, Path plan, Shell shell) {
		Path shop = ShopFolder.around(plan);
		return switch (kind) {
			case "choose" -> Optional.of(PlanReports.choose(plan));
			case "leak" -> Optional.of(PlanReports.leak(plan));
			case "harm" -> Optional.of(PlanReports.harm(plan));
			case "sound" -> Optional.of(PlanReports.sound(plan));
			case "drift" -> Optional.of(PlanReports.drift(plan));
			case "quote" -> QuoteDialog.ask(shell).map(terms -> PlanReports.quote(plan, terms));
			case "diagnose" -> DiagnosisDialog.ask(shell)
					.map(notes -> PlanReports.diagnose(plan, notes.bad(), notes.good()));
			case "stock" -> Optional.of(ShopReports.stock(shop));
			case "forecast" -> Optional.of(ShopReports.forecast(shop));
			case "history" -> Optional.of(ShopReports.history(shop));
			case "next" -> Optional.of(ShopReports.next(shop));
			case "money" -> Optional.of(ShopReports.money(shop));
			case "search" -> SearchDialog.ask(shell).map(sought -> ShopReports.search(shop, sought));
			default -> Optional.of(PlanReports.added(AddedNames.of(kind).orElseThrow(), plan));
		};
	}
}
