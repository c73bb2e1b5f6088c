package padwright.workbench.inspector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import padwright.language.edit.ElementField;
import padwright.model.keysystem.Titled;
import padwright.model.plan.KeyService;
import padwright.workbench.Messages;

/** The element at the caret as a form. */
public final class InspectorView extends ViewPart {

	public static final String ID = "padwright.workbench.inspector";

	private final List<FieldControl> fields = new ArrayList<>();
	private ScrolledComposite scrolled;
	private Composite form;
	private CaretFollower follower;
	private Optional<ElementHere> shown = Optional.empty();

	@Override
	public void createPartControl(Composite parent) {
		scrolled = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
		scrolled.setShowFocusedControl(true);
		fill();
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
			List<ElementField> anew = next.get().fields();
			for (int index = 0; index < fields.size(); index++) {
				fields.get(index).refresh(anew.get(index));
			}
		} else {
			fill();
		}
	}

	private void fill() {
		if (form != null) {
			form.dispose();
		}
		fields.clear();
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
		shown.ifPresent(here -> here.fields()
				.forEach(field -> fields.add(new FieldControl(form, field, this::write))));
		scrolled.setContent(form);
		scrolled.setMinSize(form.computeSize(SWT.DEFAULT, SWT.DEFAULT));
	}

	private static String title(ElementHere here) {
		String name = here.element() instanceof Titled titled ? titled.getName()
				: here.element() instanceof KeyService row && row.getKey() != null ? row.getKey().getName() : "";
		return (FieldWords.kind(here.element()) + " " + (name == null ? "" : name)).strip();
	}

	private void write(ElementField field, String value) {
		shown.ifPresent(here -> here.write(field, value));
	}

	/** What the form is about, for tests. */
	public String title() {
		return ((Label) form.getChildren()[0]).getText();
	}

	/** Which file and line say it, for tests. */
	public String owner() {
		return ((Label) form.getChildren()[1]).getText();
	}

	/** What is wrong with what is typed, for tests. */
	public List<String> faults() {
		return fields.stream().flatMap(field -> field.faultShown().stream()).toList();
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
		}
		super.dispose();
	}
}
