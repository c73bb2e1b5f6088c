package padwright.workbench.themes;

import java.util.Arrays;

import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;

/**
 * Changes the theme under open windows. A theme only says the colours of the controls that it has rules for: all others
 * would keep those of the theme before. So every control first forgets its colours. Rules may ask for colours of the
 * system, which follows the theme a moment later and tells so: then they are asked once more.
 */
final class ThemeChange {

	private ThemeChange() {
	}

	/** @param theme its name among those of the platform */
	static void to(String theme, Display display) {
		IThemeEngine engine = Themes.engine(display);
		display.addListener(SWT.Settings, new Listener() {
			@Override
			public void handleEvent(Event event) {
				display.removeListener(SWT.Settings, this);
				display.asyncExec(() -> dress(display, engine));
			}
		});
		engine.setTheme(theme, true);
		dress(display, engine);
	}

	private static void dress(Display display, IThemeEngine engine) {
		if (display.isDisposed()) {
			return;
		}
		for (Shell shell : display.getShells()) {
			forget(shell);
			engine.applyStyles(shell, true);
			shell.layout(true, true);
			shell.redraw();
		}
		Themes.dressed();
	}

	private static void forget(Control control) {
		control.setBackground(null);
		control.setForeground(null);
		if (control instanceof Table table) {
			table.setHeaderBackground(null);
			table.setHeaderForeground(null);
		} else if (control instanceof Tree tree) {
			tree.setHeaderBackground(null);
			tree.setHeaderForeground(null);
		} else if (control instanceof CTabFolder tabs) {
			tabs.setSelectionBackground((Color) null);
			tabs.setSelectionForeground(null);
		}
		if (control instanceof Composite composite) {
			Arrays.stream(composite.getChildren()).forEach(ThemeChange::forget);
		}
	}
}
