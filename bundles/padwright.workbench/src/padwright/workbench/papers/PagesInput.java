package padwright.workbench.papers;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** A drawn paper as something to open. It is drawn anew each time, and so not kept over a restart. */
record PagesInput(Pages pages) implements IEditorInput {

	@Override
	public <T> T getAdapter(Class<T> wanted) {
		return null;
	}

	@Override
	public boolean exists() {
		return false;
	}

	@Override
	public ImageDescriptor getImageDescriptor() {
		return null;
	}

	@Override
	public String getName() {
		return pages.title();
	}

	@Override
	public IPersistableElement getPersistable() {
		return null;
	}

	@Override
	public String getToolTipText() {
		return pages.title();
	}
}
