package padwright.workbench.help;

import java.io.IOException;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.program.Program;

import padwright.workbench.Messages;
import padwright.workbench.session.StatusLine;

/** Opens the user guide in the browser of the system. */
public final class GuideHandler extends AbstractHandler {

	private static final String GUIDE = "padwright.guide";
	private static final String FIRST_PAGE = "guide/index.html";

	@Override
	public Object execute(ExecutionEvent event) {
		try {
			String page = FileLocator.toFileURL(Platform.getBundle(GUIDE).getEntry(FIRST_PAGE)).toString();
			if (!Program.launch(page)) {
				StatusLine.tell(Messages.get("guide.at", page), false);
			}
		} catch (IOException notThere) {
			StatusLine.tell(Messages.get("guide.at", notThere.getMessage()), true);
		}
		return null;
	}
}
