package padwright.workbench.compare;

import org.eclipse.compare.CompareConfiguration;
import org.eclipse.compare.CompareEditorInput;
import org.eclipse.compare.ResourceNode;
import org.eclipse.compare.structuremergeviewer.Differencer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;

import padwright.workbench.Messages;

/** Two documents beside each other; nothing is changed in either. */
final class TwoDocuments extends CompareEditorInput {

	private final IFile left;
	private final IFile right;

	TwoDocuments(CompareConfiguration sides, IFile left, IFile right) {
		super(sides);
		this.left = left;
		this.right = right;
		sides.setLeftEditable(false);
		sides.setRightEditable(false);
		setTitle(Messages.get("compare.title", left.getName(), right.getName()));
	}

	@Override
	protected Object prepareInput(IProgressMonitor monitor) {
		return new Differencer().findDifferences(false, monitor, null, null, new ResourceNode(left),
				new ResourceNode(right));
	}
}
