package padwright.views.canvas;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import padwright.views.Palette;

/** A row of controls over a view, in the colours of its theme. */
public final class Bar {

	private static final double DISABLED = 0.6;

	private final Composite row;
	private Palette palette;

	/** Makes {@code parent} a column with this bar on top. */
	public Bar(Composite parent) {
		GridLayout column = new GridLayout(1, false);
		column.marginWidth = 0;
		column.marginHeight = 0;
		column.verticalSpacing = 0;
		parent.setLayout(column);
		row = new Composite(parent, SWT.NONE);
		row.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
		RowLayout layout = new RowLayout(SWT.HORIZONTAL);
		layout.center = true;
		layout.spacing = 6;
		layout.marginLeft = 8;
		layout.marginRight = 8;
		row.setLayout(layout);
	}

	/** Where to put controls. */
	public Composite row() {
		return row;
	}

	public Label label(String text) {
		Label label = new Label(row, SWT.NONE);
		label.setText(text);
		return label;
	}

	public Button button(String text, String tooltip, Runnable action) {
		Button button = new Button(row, SWT.PUSH);
		button.setText(text);
		button.setToolTipText(tooltip);
		button.addListener(SWT.Selection, event -> action.run());
		return button;
	}

	/** Says what a control is for to those who do not see the label beside it. */
	public static void name(Control control, String name) {
		control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = name;
			}
		});
	}

	/** Fills what the bar leaves of its parent. */
	public static void fill(Control control) {
		control.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
	}

	/** Lets a button be pressed or not, which is to be seen in every theme: some paint both alike. */
	public void enable(Button button, boolean enabled) {
		button.setEnabled(enabled);
		if (palette != null) {
			button.setForeground(Colours.of(enabled ? palette.ink() : palette.tint(palette.quiet(), DISABLED)));
		}
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		paint(row, palette);
		for (Control child : row.getChildren()) {
			if (child instanceof Button button) {
				enable(button, button.getEnabled());
			} else {
				paint(child, palette);
			}
		}
	}

	private static void paint(Control control, Palette palette) {
		control.setBackground(Colours.of(palette.ground()));
		control.setForeground(Colours.of(palette.ink()));
	}
}
