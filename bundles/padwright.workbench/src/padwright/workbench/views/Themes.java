package padwright.workbench.views;

import java.util.function.Consumer;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.e4.ui.css.swt.theme.IThemeManager;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.event.EventHandler;

import padwright.views.Palette;

/** Brings drawings the colours of the workbench's theme. */
final class Themes {

	private static final String DARK = "dark";

	private final Consumer<Palette> onChange;
	private final EventHandler handler = event -> Display.getDefault().asyncExec(this::changed);

	Themes(Consumer<Palette> onChange) {
		this.onChange = onChange;
	}

	Palette palette() {
		return isDark() ? Palette.dark() : Palette.light();
	}

	static boolean isDark() {
		IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeManager.class)
				.getEngineForDisplay(Display.getDefault());
		return engine != null && engine.getActiveTheme() != null
				&& engine.getActiveTheme().getId().contains(DARK);
	}

	private void changed() {
		onChange.accept(palette());
	}

	void follow() {
		broker().subscribe(IThemeEngine.Events.THEME_CHANGED, handler);
	}

	void unfollow() {
		broker().unsubscribe(handler);
	}

	private static IEventBroker broker() {
		return PlatformUI.getWorkbench().getService(IEventBroker.class);
	}
}
