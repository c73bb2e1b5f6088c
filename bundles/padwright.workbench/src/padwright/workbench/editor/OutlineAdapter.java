package padwright.workbench.editor;

import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;

/** Gives an editor its outline. */
public final class OutlineAdapter implements IAdapterFactory {

	@Override
	public <T> T getAdapter(Object editor, Class<T> wanted) {
		return wanted == IContentOutlinePage.class && editor instanceof PlanEditor plan
				? wanted.cast(new Outline(plan)) : null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] {IContentOutlinePage.class};
	}
}
