package padwright.workbench.app;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** One window of the workbench. */
final class WindowAdvisor extends WorkbenchWindowAdvisor {

	private static final Point FIRST_SIZE = new Point(1500, 950);

	WindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		super(configurer);
	}

	@Override
	public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
		return new BarAdvisor(configurer);
	}

	@Override
	public void preWindowOpen() {
		IWorkbenchWindowConfigurer window = getWindowConfigurer();
		window.setInitialSize(FIRST_SIZE);
		window.setShowCoolBar(true);
		window.setShowStatusLine(true);
		window.setShowProgressIndicator(true);
		window.setShowPerspectiveBar(false);
	}
}
