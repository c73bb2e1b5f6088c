package padwright.workbench.themes;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;

/** Changes between the light and the dark theme, at once and for the starts to come. */
public final class DarkThemeHandler extends AbstractHandler {

	private static final String DARK = "org.eclipse.e4.ui.css.theme.e4_dark";
	private static final String LIGHT = "org.eclipse.e4.ui.css.theme.e4_default";

	@Override
	public Object execute(ExecutionEvent event) {
		IThemeEngine engine = Themes.engine(Display.getCurrent());
		ThemeChange.to(Themes.isDark(engine) ? LIGHT : DARK, Display.getCurrent(), engine, Themes.broker());
		return null;
	}
}
