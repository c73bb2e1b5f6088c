package padwright.benchmarks.start;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.WorkbenchAdvisor;

/** A window of the platform with nothing in it, to measure others by. */
public final class BareWindow implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		Display display = PlatformUI.createDisplay();
		try {
			PlatformUI.createAndRunWorkbench(display, new WorkbenchAdvisor() {
				@Override
				public String getInitialWindowPerspectiveId() {
					return "padwright.benchmarks.start.bare";
				}
			});
			return EXIT_OK;
		} finally {
			display.dispose();
		}
	}

	@Override
	public void stop() {
		PlatformUI.getWorkbench().close();
	}

	/** Nothing but room for editors. */
	public static final class Nothing implements IPerspectiveFactory {

		@Override
		public void createInitialLayout(IPageLayout layout) {
			layout.setEditorAreaVisible(true);
		}
	}
}
