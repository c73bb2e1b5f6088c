package padwright.views.canvas;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** A field over a drawing in which a name is typed: Enter takes it, Esc or leaving the field drops it. */
final class NameField {

	private static final int NARROWEST = 90;

	NameField(Composite over, Rectangle place, String spoken, String old, Consumer<String> onName) {
		Text text = new Text(over, SWT.BORDER | SWT.SINGLE);
		Bar.name(text, spoken);
		text.setText(old);
		text.selectAll();
		int height = text.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
		text.setBounds(place.x, place.y + (place.height - height) / 2, Math.max(NARROWEST, place.width), height);
		text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(enter -> {
			String name = text.getText().strip();
			text.dispose();
			over.setFocus();
			if (!name.isEmpty() && !name.equals(old)) {
				onName.accept(name);
			}
		}));
		text.addListener(SWT.Traverse, pressed -> {
			if (pressed.detail == SWT.TRAVERSE_ESCAPE) {
				pressed.doit = false;
				text.dispose();
				over.setFocus();
			}
		});
		text.addFocusListener(FocusListener.focusLostAdapter(left -> over.getDisplay().asyncExec(text::dispose)));
		text.setFocus();
	}
}
