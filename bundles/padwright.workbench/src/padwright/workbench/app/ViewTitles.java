package padwright.workbench.app;

import java.util.stream.Stream;

import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;

/**
 * The titles of views that are not open yet. They are kept with the layout of the window, in the language in which it was
 * left.
 */
final class ViewTitles {

	private ViewTitles() {
	}

	/** Names them in the language of now. */
	static void translate(IWorkbenchWindow window) {
		MWindow model = window.getService(MWindow.class);
		parts(model).filter(part -> part.getObject() == null).forEach(ViewTitles::translate);
	}

	static Stream<MPart> parts(MWindow model) {
		return model.getSharedElements().stream().filter(MPart.class::isInstance).map(MPart.class::cast);
	}

	private static void translate(MPart part) {
		IViewDescriptor view = PlatformUI.getWorkbench().getViewRegistry().find(part.getElementId());
		if (view != null) {
			part.setLabel(view.getLabel());
		}
	}
}
