package padwright.workbench.themes;

import java.util.Map;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/**
 * Brings another theme over an open window. Sheets of the platform ask the toolkit for its colours when they are applied,
 * but tell it only afterwards whether it shall be dark, so that trees, tabs and buttons would keep the colours of the theme
 * before. So the toolkit is told first, and the sheets are applied once its colours are others.
 */
final class ThemeChange {

	private static final int GLANCE_MS = 20;
	/** A toolkit whose colours do not change is not waited for longer: half a second. */
	private static final int MOST_GLANCES = 25;

	private final Display display;
	private final IThemeEngine engine;
	private final ITheme wanted;
	private final RGB before;

	private ThemeChange(Display display, IThemeEngine engine, ITheme wanted) {
		this.display = display;
		this.engine = engine;
		this.wanted = wanted;
		this.before = ground();
	}

	/** Changes to a theme, and keeps it for the starts to come; nothing where there is no such theme. */
	static void to(String id, Display display, IThemeEngine engine, IEventBroker broker) {
		engine.getThemes().stream().filter(theme -> theme.getId().equals(id)).findFirst()
				.ifPresent(wanted -> new ThemeChange(display, engine, wanted).begin(broker));
	}

	private void begin(IEventBroker broker) {
		broker.send(IThemeEngine.Events.THEME_CHANGED, Map.of(IThemeEngine.Events.THEME, wanted,
				IThemeEngine.Events.DEVICE, display, IThemeEngine.Events.THEME_ENGINE, engine,
				IThemeEngine.Events.RESTORE, false));
		goOn(0);
	}

	private void goOn(int glances) {
		display.timerExec(GLANCE_MS, () -> {
			if (ground().equals(before) && glances < MOST_GLANCES) {
				goOn(glances + 1);
			} else {
				engine.setTheme(wanted, true);
			}
		});
	}

	private RGB ground() {
		return display.getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB();
	}
}
