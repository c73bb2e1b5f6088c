package padwright.workbench.app;

import java.util.List;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** One window of the workbench. */
final class WindowAdvisor extends WorkbenchWindowAdvisor {

	/** What the platform offers those who write program code. */
	private static final List<String> NOT_FOR_THE_BENCH = List.of("org.eclipse.ui.actionSet.openFiles",
			"org.eclipse.ui.edit.text.actionSet.openExternalFile",
			"org.eclipse.ui.edit.text.actionSet.convertLineDelimitersTo",
			"org.eclipse.ui.edit.text.actionSet.annotationNavigation",
			"org.eclipse.ui.edit.text.actionSet.navigation",
			"org.eclipse.ui.edit.text.actionSet.presentation",
			"org.eclipse.ui.NavigateActionSet", "org.eclipse.ui.actionSet.keyBindings");

	/** Where the screen is large enough. */
	private static final Point FIRST_SIZE = new Point(1500, 950);

	WindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		super(configurer);
	}

	@Override
	public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
		return new BarAdvisor(configurer);
	}

	@Override
	public void postWindowOpen() {
		ViewTitles.translate(getWindowConfigurer().getWindow());
		SearchField.hide(getWindowConfigurer().getWindow());
		IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
		if (page != null) {
			leaveOutWhatIsNotForTheBench(page);
			UndoEverywhere.in(page.getWorkbenchWindow());
		}
	}

	/** To be done again whenever the platform has put its own back. */
	static void leaveOutWhatIsNotForTheBench(IWorkbenchPage page) {
		NOT_FOR_THE_BENCH.forEach(page::hideActionSet);
	}

	@Override
	public void preWindowOpen() {
		IWorkbenchWindowConfigurer window = getWindowConfigurer();
		Rectangle screen = PlatformUI.getWorkbench().getDisplay().getPrimaryMonitor().getClientArea();
		window.setInitialSize(new Point(Math.min(FIRST_SIZE.x, screen.width), Math.min(FIRST_SIZE.y, screen.height)));
		window.setShowCoolBar(true);
		window.setShowStatusLine(true);
		window.setShowProgressIndicator(true);
		window.setShowPerspectiveBar(false);
	}
}
