package padwright.workbench.inspector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

import padwright.workbench.controls.Named;

/** One control of a form. What is typed is looked at once; Enter or leaving writes it. */
final class FieldControl {

	/** Room on the left for the mark of a fault. */
	static final int DECORATION = 8;

	private final BiConsumer<FormCell, String> onChange;
	private final Control control;
	private final ControlDecoration fault;
	private FormCell cell;
	private boolean showing;
	/** Whether something was typed since the field was shown or written. */
	private boolean isUnwritten;

	/**
	 * @param isInARow whether others stand beside it, so that it has to be small
	 * @param onChange told of a cell and its new value, which has no fault
	 */
	FieldControl(Composite form, FormCell cell, boolean isInARow, BiConsumer<FormCell, String> onChange) {
		this.onChange = onChange;
		this.cell = cell;
		List<String> choices = cell.choices(isInARow);
		control = !choices.isEmpty() ? choice(form, choices) : text(form);
		Named.as(cell.name(), control);
		control.setToolTipText(isInARow ? cell.name() + "\n" + cell.owner() : cell.owner());
		GridDataFactory.fillDefaults().grab(true, false).indent(DECORATION, 0).applyTo(control);
		fault = new ControlDecoration(control, SWT.LEFT | SWT.TOP);
		fault.setImage(FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR)
				.getImage());
		fault.hide();
		show();
	}

	/** Makes it as wide as all others of its column. */
	void narrow(int width) {
		GridDataFactory.fillDefaults().hint(width, SWT.DEFAULT).indent(DECORATION, 0).applyTo(control);
	}

	private Combo choice(Composite form, List<String> choices) {
		Combo combo = new Combo(form, SWT.READ_ONLY);
		List<String> items = new ArrayList<>(List.of(""));
		items.addAll(choices);
		combo.setItems(items.toArray(String[]::new));
		combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(chosen -> {
			look();
			write();
		}));
		return combo;
	}

	private Text text(Composite form) {
		Text text = new Text(form, SWT.SINGLE | SWT.BORDER);
		text.addModifyListener(typed -> {
			if (!showing) {
				isUnwritten = true;
				look();
			}
		});
		text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(enter -> write()));
		text.addFocusListener(FocusListener.focusLostAdapter(left -> write()));
		text.addListener(SWT.Traverse, pressed -> {
			if (pressed.detail == SWT.TRAVERSE_ESCAPE) {
				pressed.doit = false;
				show();
			}
		});
		return text;
	}

	private String typed() {
		return control instanceof Text text ? text.getText() : ((Combo) control).getText();
	}

	private boolean isChanged() {
		return !typed().equals(cell.text());
	}

	private Optional<String> look() {
		Optional<String> wrong = isChanged() ? cell.fault(typed()) : Optional.empty();
		if (wrong.isPresent()) {
			fault.setDescriptionText(wrong.get());
			fault.show();
		} else {
			fault.hide();
		}
		return wrong;
	}

	private void write() {
		if (isChanged() && look().isEmpty()) {
			isUnwritten = false;
			onChange.accept(cell, typed());
		}
	}

	/** Shows the same field as it was read anew; what was typed in it and not written yet stays. */
	void refresh(FormCell anew) {
		cell = anew;
		if (!isUnwritten || !isChanged()) {
			show();
		}
	}

	private void show() {
		showing = true;
		isUnwritten = false;
		if (control instanceof Text text) {
			text.setText(cell.text());
		} else {
			((Combo) control).setText(cell.text());
		}
		showing = false;
		look();
	}

	/** What is wrong with what is typed, for tests. */
	Optional<String> faultShown() {
		return fault.isVisible() ? Optional.of(fault.getDescriptionText()) : Optional.empty();
	}
}
