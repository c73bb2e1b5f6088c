package padwright.workbench.bench;

import java.util.function.Consumer;

import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;

/** Tells which part was activated or brought to the top, and which was closed. */
record EditorFollower(Consumer<IWorkbenchPart> onActive, Consumer<IWorkbenchPart> onClosed) implements IPartListener2 {

	@Override
	public void partActivated(IWorkbenchPartReference part) {
		tell(onActive, part);
	}

	@Override
	public void partBroughtToTop(IWorkbenchPartReference part) {
		tell(onActive, part);
	}

	@Override
	public void partClosed(IWorkbenchPartReference part) {
		tell(onClosed, part);
	}

	private static void tell(Consumer<IWorkbenchPart> listener, IWorkbenchPartReference part) {
		if (part.getPart(false) != null) {
			listener.accept(part.getPart(false));
		}
	}
}
