package padwright.workbench.themes;

import java.util.function.Consumer;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.e4.ui.css.swt.theme.IThemeManager;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.event.EventHandler;

import padwright.views.Palette;

/** Brings drawings the colours of the workbench's theme. */
public final class Themes {

	private static final String DARK = "dark";

	private final Consumer<Palette> onChange;
	private final EventHandler handler = event -> Display.getDefault().asyncExec(this::changed);

	public Themes(Consumer<Palette> onChange) {
		this.onChange = onChange;
	}

	public Palette palette() {
		return isDark(engine(Display.getDefault())) ? Palette.dark() : Palette.light();
	}

	static IThemeEngine engine(Display display) {
		return PlatformUI.getWorkbench().getService(IThemeManager.class).getEngineForDisplay(display);
	}

	static boolean isDark(IThemeEngine engine) {
		return engine != null && engine.getActiveTheme() != null
				&& engine.getActiveTheme().getId().contains(DARK);
	}

	private void changed() {
		onChange.accept(palette());
	}

	public void follow() {
		broker().subscribe(IThemeEngine.Events.THEME_CHANGED, handler);
	}

	public void unfollow() {
		broker().unsubscribe(handler);
	}

	static IEventBroker broker() {
		return PlatformUI.getWorkbench().getService(IEventBroker.class);
	}
}
