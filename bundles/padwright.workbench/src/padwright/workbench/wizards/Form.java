package padwright.workbench.wizards;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import padwright.workbench.Messages;
import padwright.workbench.controls.Named;

/** The fields of a page, one below the other, each with its label. */
final class Form {

	private static final int COLUMNS = 3;

	private final Composite area;
	private final Runnable onChange;

	/** @param onChange told whenever something was typed or chosen */
	Form(Composite parent, Runnable onChange) {
		this.onChange = onChange;
		area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(COLUMNS).applyTo(area);
	}

	Composite area() {
		return area;
	}

	Text text(String key, String initial) {
		Text text = named(key, new Text(area, SWT.BORDER), 2);
		text.setText(initial);
		text.addModifyListener(typed -> onChange.run());
		return text;
	}

	/** A text with a button beside it. */
	Text text(String key, String initial, String buttonKey, Runnable onButton) {
		Text text = named(key, new Text(area, SWT.BORDER), 1);
		text.setText(initial);
		text.addModifyListener(typed -> onChange.run());
		Button button = new Button(area, SWT.PUSH);
		button.setText(Messages.get(buttonKey));
		button.addSelectionListener(SelectionListener.widgetSelectedAdapter(pushed -> onButton.run()));
		return text;
	}

	Combo choice(String key, List<String> items) {
		Combo combo = named(key, new Combo(area, SWT.READ_ONLY), 2);
		combo.setItems(items.toArray(String[]::new));
		combo.select(0);
		combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(chosen -> onChange.run()));
		return combo;
	}

	Button check(String key, boolean initial) {
		Button check = new Button(area, SWT.CHECK);
		check.setText(Messages.get(key));
		check.setSelection(initial);
		GridDataFactory.fillDefaults().span(COLUMNS, 1).applyTo(check);
		check.addSelectionListener(SelectionListener.widgetSelectedAdapter(chosen -> onChange.run()));
		return check;
	}

	private <C extends Control> C named(String key, C control, int span) {
		Label label = new Label(area, SWT.NONE);
		label.setText(Messages.get(key));
		label.moveAbove(control);
		GridDataFactory.fillDefaults().grab(true, false).span(span, 1).applyTo(control);
		return Named.as(Messages.get(key), control);
	}
}
