package padwright.language.ide.folding;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.ide.editor.folding.DefaultFoldingRangeProvider;
import org.eclipse.xtext.ide.editor.folding.FoldingRangeKind;
import org.eclipse.xtext.ide.editor.folding.IFoldingRangeAcceptor;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

import padwright.model.plan.Document;

/** Folds every element of several lines, and comments on lines one after another. */
public final class FoldedBlocks extends DefaultFoldingRangeProvider {

	private static final String COMMENT = "//";

	@Override
	protected boolean isHandled(EObject element) {
		return !(element instanceof Document);
	}

	@Override
	protected void computeCommentFolding(XtextResource document, IFoldingRangeAcceptor acceptor) {
		ILeafNode first = null;
		ILeafNode last = null;
		for (ILeafNode leaf : document.getParseResult().getRootNode().getLeafNodes()) {
			if (leaf.isHidden() && leaf.getText().startsWith(COMMENT)) {
				first = first == null ? leaf : first;
				last = leaf;
			} else if (!leaf.isHidden() || NodeModelUtils.getLineAndColumn(leaf, leaf.getEndOffset()).getLine() > leaf
					.getStartLine() + 1) {
				accept(first, last, acceptor);
				first = null;
			}
		}
		accept(first, last, acceptor);
	}

	private static void accept(ILeafNode first, ILeafNode last, IFoldingRangeAcceptor acceptor) {
		if (first != null && first != last) {
			int end = last.getOffset() + last.getText().stripTrailing().length();
			acceptor.accept(first.getOffset(), end - first.getOffset(), FoldingRangeKind.COMMENT);
		}
	}
}
