package padwright.workbench.shops;

import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IFile;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.editor.Places;

/** Opens the documents that are chosen in the tree. */
public final class OpenDocumentHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		List<?> chosen = HandlerUtil.getCurrentStructuredSelection(event).toList();
		chosen.stream().filter(IFile.class::isInstance).map(IFile.class::cast).forEach(Places::editor);
		return null;
	}
}
