package padwright.workbench.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

class ViewTitlesTest {

	/** As after a start in another language than the one in which the window was left. */
	@Test
	void viewsThatAreNotOpenYetAreNamedAnew() {
		PlatformUI.getWorkbench().getDisplay().syncExec(() -> {
			IWorkbenchWindow window = PlatformUI.getWorkbench().getWorkbenchWindows()[0];
			MPart closed = ViewTitles.parts(window.getService(MWindow.class)).filter(part -> part.getObject() == null
					&& PlatformUI.getWorkbench().getViewRegistry().find(part.getElementId()) != null).findFirst().orElseThrow();
			String title = PlatformUI.getWorkbench().getViewRegistry().find(closed.getElementId()).getLabel();
			closed.setLabel("another language");
			ViewTitles.translate(window);
			assertEquals(title, closed.getLabel());
		});
	}
}
