package padwright.workbench.themes;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Display;

/** Changes from the light theme to the dark one, or back, at once and for good. */
public final class DarkThemeHandler extends AbstractHandler {

	private static final String DARK = "org.eclipse.e4.ui.css.theme.e4_dark";
	private static final String LIGHT = "org.eclipse.e4.ui.css.theme.e4_default";

	@Override
	public Object execute(ExecutionEvent event) {
		Display display = Display.getCurrent();
		ThemeChange.to(Themes.isDark(Themes.engine(display)) ? LIGHT : DARK, display);
		return null;
	}
}
