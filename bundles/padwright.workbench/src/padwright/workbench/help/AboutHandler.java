package padwright.workbench.help;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.handlers.HandlerUtil;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;

import padwright.workbench.Messages;

/** Says what the program is, in which version, and where it keeps what is needed to find a fault. */
public final class AboutHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		MessageDialog.openInformation(HandlerUtil.getActiveShell(event), Messages.get("about.title"), text());
		return null;
	}

	static String text() {
		Version version = FrameworkUtil.getBundle(AboutHandler.class).getVersion();
		return Messages.get("about.text", version.getMajor() + "." + version.getMinor() + "." + version.getMicro(),
				version.getQualifier(), Platform.getLogFileLocation());
	}
}
