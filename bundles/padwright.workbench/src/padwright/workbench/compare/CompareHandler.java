package padwright.workbench.compare;

import java.util.List;

import org.eclipse.compare.CompareConfiguration;
import org.eclipse.compare.CompareEditorInput;
import org.eclipse.compare.CompareUI;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.handlers.HandlerUtil;

import padwright.workbench.Messages;
import padwright.workbench.session.StatusLine;

/** Compares the two documents that are selected, by their elements. */
public final class CompareHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		IStructuredSelection selection = HandlerUtil.getCurrentStructuredSelection(event);
		List<IFile> files = selection.stream().filter(IFile.class::isInstance).map(IFile.class::cast).toList();
		if (files.size() == 2) {
			CompareUI.openCompareEditor(input(files.get(0), files.get(1)));
		} else {
			StatusLine.tell(Messages.get("compare.chooseTwo"), true);
		}
		return null;
	}

	static CompareEditorInput input(IFile left, IFile right) {
		CompareConfiguration sides = new CompareConfiguration();
		sides.setLeftLabel(left.getName());
		sides.setRightLabel(right.getName());
		return new TwoDocuments(sides, left, right);
	}
}
