package padwright.views.canvas;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import padwright.views.Palette;

/** A drawing with a bar of controls above and a line of words below, in the colours of one theme. */
abstract class DrawingControl extends Composite {

	private static final int INDENT = 8;

	private final Bar bar;
	private SceneCanvas canvas;
	private Label status;
	private Palette palette;

	DrawingControl(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		bar = new Bar(this);
	}

	/** Makes the drawing and the line below, once all that stands above them is made. */
	final void drawing(String name, SceneListener listener) {
		canvas = new SceneCanvas(this, palette, listener);
		canvas.setName(name);
		Bar.fill(canvas);
		status = new Label(this, SWT.WRAP);
		GridData line = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
		line.horizontalIndent = INDENT;
		status.setLayoutData(line);
	}

	final Bar bar() {
		return bar;
	}

	/** Where it is drawn. */
	public final SceneCanvas canvas() {
		return canvas;
	}

	final Palette palette() {
		return palette;
	}

	/** What the line below says. */
	public final String status() {
		return status.getText();
	}

	final void tell(String words) {
		if (!words.equals(status.getText())) {
			status.setText(words);
			status.requestLayout();
		}
	}

	public void setPalette(Palette other) {
		palette = other;
		bar.setPalette(other);
		canvas.setPalette(other);
		paint(List.of(this, status));
		redrawn();
	}

	final void paint(List<Control> controls) {
		for (Control control : controls) {
			control.setBackground(Colours.of(palette.ground()));
			control.setForeground(Colours.of(palette.ink()));
		}
	}

	/** Draws what is to be seen now. */
	abstract void redrawn();

	@Override
	public boolean setFocus() {
		return canvas.setFocus();
	}
}
