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
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import padwright.language.edit.ElementField;
import padwright.workbench.Messages;
import padwright.workbench.controls.Named;

/** One field of a form: its name, its value, and its unit. What is typed is looked at once; Enter or leaving writes it. */
final class FieldControl {

	private static final int DECORATION = 8;

	private final BiConsumer<ElementField, String> onChange;
	private final Control control;
	private final Label unit;
	private final ControlDecoration fault;
	private ElementField field;
	private boolean showing;

	/** @param onChange told of a field and its new value, which has no fault */
	FieldControl(Composite form, ElementField field, BiConsumer<ElementField, String> onChange) {
		this.onChange = onChange;
		this.field = field;
		String name = FieldWords.name(field);
		Label label = new Label(form, SWT.NONE);
		label.setText(name);
		control = field.isEditable() && !field.choices().isEmpty() ? choice(form) : text(form);
		Named.as(name, control);
		GridDataFactory.fillDefaults().grab(true, false).indent(DECORATION, 0).applyTo(control);
		unit = new Label(form, SWT.NONE);
		fault = new ControlDecoration(control, SWT.LEFT | SWT.TOP);
		fault.setImage(FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR)
				.getImage());
		fault.hide();
		show(field);
	}

	private Combo choice(Composite form) {
		Combo combo = new Combo(form, SWT.READ_ONLY);
		List<String> items = new ArrayList<>(List.of(""));
		items.addAll(field.choices());
		combo.setItems(items.toArray(String[]::new));
		combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(chosen -> {
			look();
			write();
		}));
		return combo;
	}

	private Text text(Composite form) {
		boolean editable = field.isEditable();
		Text text = new Text(form, SWT.SINGLE | (editable ? SWT.BORDER : SWT.READ_ONLY));
		if (!editable) {
			text.setMessage(Messages.get("inspector.readOnly"));
			text.setToolTipText(Messages.get("inspector.readOnly"));
			return text;
		}
		text.addModifyListener(typed -> {
			if (!showing) {
				look();
			}
		});
		text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(enter -> write()));
		text.addFocusListener(FocusListener.focusLostAdapter(left -> write()));
		text.addListener(SWT.Traverse, pressed -> {
			if (pressed.detail == SWT.TRAVERSE_ESCAPE) {
				pressed.doit = false;
				show(field);
			}
		});
		return text;
	}

	private String typed() {
		return control instanceof Text text ? text.getText() : ((Combo) control).getText();
	}

	private boolean isChanged() {
		return !typed().equals(field.text());
	}

	private Optional<String> look() {
		Optional<String> wrong = isChanged() ? field.fault(typed()) : Optional.empty();
		if (wrong.isPresent()) {
			fault.setDescriptionText(wrong.get());
			fault.show();
		} else {
			fault.hide();
		}
		return wrong;
	}

	private void write() {
		if (field.isEditable() && isChanged() && look().isEmpty()) {
			onChange.accept(field, typed());
		}
	}

	/** Shows the same field as it was read anew; what is being typed in it stays. */
	void refresh(ElementField anew) {
		boolean isBeingTyped = control.isFocusControl() && isChanged() && !typed().equals(anew.text());
		field = anew;
		if (!isBeingTyped) {
			show(anew);
		}
	}

	private void show(ElementField shown) {
		showing = true;
		if (control instanceof Text text) {
			text.setText(shown.text());
		} else {
			((Combo) control).setText(shown.text());
		}
		showing = false;
		unit.setText(FieldWords.unit(shown));
		unit.requestLayout();
		look();
	}

	/** What is wrong with what is typed, for tests. */
	Optional<String> faultShown() {
		return fault.isVisible() ? Optional.of(fault.getDescriptionText()) : Optional.empty();
	}
}
