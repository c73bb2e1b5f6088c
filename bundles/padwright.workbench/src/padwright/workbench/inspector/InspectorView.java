package padwright.workbench.inspector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import padwright.language.edit.ListRows;
import padwright.language.edit.TextEdit;
import padwright.model.keysystem.Titled;
import padwright.model.plan.KeyService;
import padwright.workbench.Messages;
import padwright.workbench.controls.Named;
import padwright.workbench.themes.Themes;

/** The element at the caret as a form. */
public final class InspectorView extends ViewPart implements FormListener {

	public static final String ID = "padwright.workbench.inspector";

	private final List<LineControl> lines = new ArrayList<>();
	private ScrolledComposite scrolled;
	private Composite form;
	private CaretFollower follower;
	private Themes themes;
	private Optional<ElementHere> shown = Optional.empty();

	@Override
	public void createPartControl(Composite parent) {
		scrolled = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
		scrolled.setShowFocusedControl(true);
		themes = new Themes(palette -> fill());
		fill();
		themes.follow();
		follower = new CaretFollower(getSite().getWorkbenchWindow(), this::show);
		follower.start();
	}

	private void show(Optional<ElementHere> next) {
		if (scrolled.isDisposed()) {
			return;
		}
		boolean isLike = next.isPresent() && shown.filter(next.get()::isLike).isPresent();
		shown = next;
		if (isLike) {
			((Label) form.getChildren()[1]).setText(next.get().owner());
			List<FormLine> anew = next.get().lines();
			for (int index = 0; index < lines.size(); index++) {
				lines.get(index).refresh(anew.get(index));
			}
		} else {
			fill();
		}
	}

	/** Makes the form anew; what had the focus has it again, if there still is such a control. */
	private void fill() {
		Control focus = scrolled.getDisplay().getFocusControl();
		String focused = focus != null && form != null && isIn(form, focus) ? Named.of(focus) : "";
		if (form != null) {
			form.dispose();
		}
		lines.clear();
		form = new Composite(scrolled, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(3).applyTo(form);
		Label title = new Label(form, SWT.NONE);
		title.setText(shown.map(here -> title(here)).orElseGet(() -> Messages.get("inspector.nothing")));
		title.setFont(shown.isPresent() ? JFaceResources.getHeaderFont() : JFaceResources.getDefaultFont());
		GridDataFactory.fillDefaults().span(3, 1).applyTo(title);
		shown.ifPresent(here -> {
			Label owner = new Label(form, SWT.NONE);
			owner.setText(here.owner());
			GridDataFactory.fillDefaults().span(3, 1).applyTo(owner);
		});
		shown.filter(ElementHere::isChanged).ifPresent(here -> takeBack());
		shown.ifPresent(here -> here.lines()
				.forEach(line -> lines.add(new LineControl(form, line, this, themes.palette()))));
		scrolled.setContent(form);
		scrolled.setMinSize(form.computeSize(SWT.DEFAULT, SWT.DEFAULT));
		if (!focused.isEmpty()) {
			focus(form, focused);
		}
	}

	private void takeBack() {
		Button button = Named.as(Messages.get("layout.asInherited"), new Button(form, SWT.PUSH));
		button.setText(Messages.get("layout.asInherited"));
		button.addListener(SWT.Selection, pressed -> shown.ifPresent(ElementHere::takeBack));
		GridDataFactory.swtDefaults().span(3, 1).applyTo(button);
	}

	private static boolean isIn(Composite around, Control control) {
		return control == around || control.getParent() != null && isIn(around, control.getParent());
	}

	private static void focus(Composite within, String name) {
		for (Control child : within.getChildren()) {
			if (Named.of(child).equals(name)) {
				child.setFocus();
			} else if (child instanceof Composite inner) {
				focus(inner, name);
			}
		}
	}

	private static String title(ElementHere here) {
		String name = here.element() instanceof Titled titled ? titled.getName()
				: here.element() instanceof KeyService row && row.getKey() != null ? row.getKey().getName() : "";
		return (FieldWords.kind(here.element()) + " " + (name == null ? "" : name)).strip();
	}

	@Override
	public void changed(FormCell cell, String value) {
		shown.ifPresent(here -> here.write(cell, value));
	}

	@Override
	public void edited(ListRows rows, List<TextEdit> edits) {
		shown.ifPresent(here -> here.write(rows, edits));
	}

	@Override
	public boolean canRemove(ListRows rows) {
		return shown.filter(here -> here.canRemove(rows)).isPresent();
	}

	/** What the form is about, for tests. */
	public String title() {
		return ((Label) form.getChildren()[0]).getText();
	}

	/** Whether it is of the text as it is, for tests. */
	public boolean isCurrent() {
		return shown.filter(ElementHere::isOfText).isPresent();
	}

	/** Which file and line say it, for tests. */
	public String owner() {
		return ((Label) form.getChildren()[1]).getText();
	}

	/** What is wrong with what is typed, for tests. */
	public List<String> faults() {
		return lines.stream().flatMap(LineControl::faults).toList();
	}

	@Override
	public void setFocus() {
		if (!form.setFocus()) {
			scrolled.setFocus();
		}
	}

	@Override
	public void dispose() {
		if (follower != null) {
			follower.stop();
			themes.unfollow();
		}
		super.dispose();
	}
}
