package padwright.workbench.editor;

import org.eclipse.core.resources.IMarker;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IMarkerResolution2;

/** A cure of the server where markers are cured. */
final class ActionResolution implements IMarkerResolution2 {

	private final CodeAction action;

	ActionResolution(CodeAction action) {
		this.action = action;
	}

	@Override
	public String getLabel() {
		return action.getTitle();
	}

	@Override
	public void run(IMarker marker) {
		Actions.run(action);
	}

	@Override
	public String getDescription() {
		return null;
	}

	@Override
	public Image getImage() {
		return null;
	}
}
