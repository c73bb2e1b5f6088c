package padwright.workbench.tour;

import java.util.List;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;

import padwright.workbench.Messages;

/** A short tour: each step says what a part of the window is for, and brings it to the front. */
public final class TourView extends ViewPart {

	public static final String ID = "padwright.workbench.tour";

	private static final int MARGIN = 8;

	private final List<Step> steps = Step.all();
	private int at;
	private Label title;
	private StyledText words;
	private Label count;
	private Button back;
	private Button next;

	/** Opens the tour at its first step. */
	public static void begin() {
		IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
		try {
			((TourView) page.showView(ID)).go(0);
		} catch (PartInitException unopened) {
			ILog.of(TourView.class).log(unopened.getStatus());
		}
	}

	@Override
	public void createPartControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(3).margins(MARGIN, MARGIN).applyTo(area);
		title = new Label(area, SWT.WRAP);
		title.setFont(JFaceResources.getHeaderFont());
		GridDataFactory.fillDefaults().span(3, 1).grab(true, false).hint(1, SWT.DEFAULT).applyTo(title);
		words = new StyledText(area, SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
		words.setAlwaysShowScrollBars(false);
		words.setCaret(null);
		GridDataFactory.fillDefaults().span(3, 1).grab(true, true).hint(1, 1).applyTo(words);
		count = new Label(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(count);
		back = button(area, "tour.back", -1);
		next = button(area, "tour.next", 1);
		show();
	}

	private Button button(Composite area, String key, int by) {
		Button button = new Button(area, SWT.PUSH);
		button.setText(Messages.get(key));
		button.addSelectionListener(SelectionListener.widgetSelectedAdapter(chosen -> go(at + by)));
		return button;
	}

	/** Goes to a step; behind the last one the tour ends. */
	private void go(int step) {
		if (step == steps.size()) {
			getSite().getPage().hideView(this);
			return;
		}
		at = step;
		show();
		bringToFront(steps.get(at));
	}

	private void show() {
		Step step = steps.get(at);
		title.setText(step.title());
		words.setText(step.words());
		count.setText(Messages.get("tour.count", at + 1, steps.size()));
		next.setText(Messages.get(at == steps.size() - 1 ? "tour.end" : "tour.next"));
		back.setEnabled(at > 0);
		title.getParent().layout();
	}

	/** The focus stays in the tour, so that Enter leads on. */
	private void bringToFront(Step step) {
		IWorkbenchPage page = getSite().getPage();
		IEditorPart editor = page.getActiveEditor();
		try {
			if (step.view().isPresent()) {
				page.showView(step.view().get(), null, IWorkbenchPage.VIEW_VISIBLE);
			} else if (editor != null) {
				page.bringToTop(editor);
			}
		} catch (PartInitException unopened) {
			ILog.of(TourView.class).log(unopened.getStatus());
		}
	}

	/** What is being told, for tests. */
	public String title() {
		return title.getText();
	}

	/** Goes to the next step, as its button does. */
	public void next() {
		go(at + 1);
	}

	@Override
	public void setFocus() {
		next.setFocus();
	}
}
