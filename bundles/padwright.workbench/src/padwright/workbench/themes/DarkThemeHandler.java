package padwright.workbench.themes;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;
import org.osgi.service.prefs.BackingStoreException;

import padwright.workbench.Messages;

/**
 * Chooses the light or the dark theme for the next start. Changed under an open window, trees, tabs and buttons would keep
 * colours of the theme before.
 */
public final class DarkThemeHandler extends AbstractHandler {

	private static final String DARK = "org.eclipse.e4.ui.css.theme.e4_dark";
	private static final String LIGHT = "org.eclipse.e4.ui.css.theme.e4_default";
	private static final String ENGINE = "org.eclipse.e4.ui.css.swt.theme";
	private static final String CHOICE = "themeid";

	@Override
	public Object execute(ExecutionEvent event) {
		IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(ENGINE);
		preferences.put(CHOICE, Themes.isDark(Themes.engine(Display.getCurrent())) ? LIGHT : DARK);
		try {
			preferences.flush();
		} catch (BackingStoreException notKept) {
			ILog.of(DarkThemeHandler.class).warn(notKept.getMessage());
		}
		if (MessageDialog.openQuestion(HandlerUtil.getActiveShell(event), Messages.get("theme.title"),
				Messages.get("theme.restart"))) {
			PlatformUI.getWorkbench().restart();
		}
		return null;
	}
}
