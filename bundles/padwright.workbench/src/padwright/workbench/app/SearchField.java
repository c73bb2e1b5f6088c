package padwright.workbench.app;

import java.util.stream.Stream;

import org.eclipse.e4.ui.model.application.ui.basic.MTrimElement;
import org.eclipse.e4.ui.model.application.ui.basic.MTrimmedWindow;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.ui.IWorkbenchWindow;

/** The field in which the platform lets programmers find its actions. */
final class SearchField {

	private static final String ID = "SearchField";

	private SearchField() {
	}

	/** Takes it out of a window. */
	static void hide(IWorkbenchWindow window) {
		in(window).forEach(field -> field.setToBeRendered(false));
	}

	static Stream<MTrimElement> in(IWorkbenchWindow window) {
		return window.getService(MWindow.class) instanceof MTrimmedWindow trimmed
				? trimmed.getTrimBars().stream().flatMap(bar -> bar.getChildren().stream())
						.filter(element -> ID.equals(element.getElementId()))
				: Stream.empty();
	}
}
