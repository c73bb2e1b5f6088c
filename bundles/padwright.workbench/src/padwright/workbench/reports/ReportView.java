package padwright.workbench.reports;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.ui.texteditor.ITextEditor;

import padwright.language.ide.server.LocalServer;
import padwright.views.table.ReportControl;
import padwright.workbench.Messages;
import padwright.workbench.editor.Places;
import padwright.workbench.papers.ReportPaper;
import padwright.workbench.session.Documents;
import padwright.workbench.themes.Themes;
import padwright.workup.report.Report;
import padwright.workup.report.ReportTable.Row;

/** A report about a plan or a shop; several can be open at once. Its rows lead to the keys and plans they tell of. */
public final class ReportView extends ViewPart {

	public static final String ID = "padwright.workbench.report";

	private static int count;

	private ReportControl control;
	private Themes themes;
	private Optional<ReportMaker> maker = Optional.empty();
	private Optional<Made> made = Optional.empty();

	/** Makes a report in the background and shows it in a view of its own. */
	static void open(ReportMaker maker, IWorkbenchPage page) throws PartInitException {
		ReportView view = (ReportView) page.showView(ID, "r" + count++, IWorkbenchPage.VIEW_ACTIVATE);
		view.maker = Optional.of(maker);
		view.make();
	}

	@Override
	public void createPartControl(Composite parent) {
		themes = new Themes(palette -> control.setPalette(palette));
		control = new ReportControl(parent, themes.palette());
		control.onOpen(this::goTo);
		control.onAgain(this::make);
		control.onPrint(() -> made.ifPresent(
				report -> new ReportPaper(report.report(), getSite().getPage()).schedule()));
		themes.follow();
		say(Messages.get("report.empty"));
	}

	private void make() {
		maker.ifPresent(work -> {
			say(Messages.get("report.making"));
			Job job = Job.create(Messages.get("report.making"), (ICoreRunnable) monitor -> {
				try {
					Made result = work.make(monitor);
					later(() -> show(result));
				} catch (OperationCanceledException cancelled) {
					later(() -> say(Messages.get("report.cancelled")));
				} catch (IllegalArgumentException nothing) {
					later(() -> say(nothing.getMessage()));
				}
			});
			job.schedule();
		});
	}

	private void later(Runnable work) {
		control.getDisplay().asyncExec(() -> {
			if (!control.isDisposed()) {
				work.run();
			}
		});
	}

	private void say(String words) {
		control.show(new Report(getPartName(), List.of(words), List.of()));
	}

	private void show(Made result) {
		made = Optional.of(result);
		setPartName(result.report().title());
		control.show(result.report());
	}

	private void goTo(Row row) {
		made.flatMap(report -> Optional.ofNullable(report.plans().get(row.plan().orElse(Made.OWN))))
				.flatMap(file -> Documents.file(LocalServer.uri(file))).flatMap(Places::editor)
				.ifPresent(editor -> reveal(editor, row));
	}

	/** A file may hold several plans: a key is sought behind the head of its own. */
	private static void reveal(ITextEditor editor, Row row) {
		String text = editor.getDocumentProvider().getDocument(editor.getEditorInput()).get();
		int head = row.plan().map(plan -> reveal(editor, text, "plan", plan, 0)).orElse(0);
		row.key().ifPresent(key -> reveal(editor, text, "key", key, head));
	}

	/** Selects the name behind a word that begins a line, and tells where it is. */
	private static int reveal(ITextEditor editor, String text, String word, String name, int from) {
		Matcher line = Pattern.compile("(?m)^\\s*" + word + "\\s+[\\^\"]?(" + Pattern.quote(name) + ")(?![\\p{L}\\p{N}_])").matcher(text);
		if (!line.find(from)) {
			return from;
		}
		editor.selectAndReveal(line.start(1), line.end(1) - line.start(1));
		return line.start(1);
	}

	/** What is shown. */
	public String text() {
		return control.text();
	}

	@Override
	public void setFocus() {
		control.setFocus();
	}

	@Override
	public void dispose() {
		themes.unfollow();
		super.dispose();
	}
}
