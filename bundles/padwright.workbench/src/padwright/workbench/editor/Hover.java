package padwright.workbench.editor;

import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.lsp4j.HoverParams;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Positions;

/** Tells what is known about the word under the pointer. */
public final class Hover implements ITextHover {

	@Override
	public String getHoverInfo(ITextViewer viewer, IRegion region) {
		return Answers.of(viewer.getDocument(), (server, text) -> server.documents()
				.hover(new HoverParams(text, Positions.position(viewer.getDocument(), region.getOffset()))))
				.filter(hover -> hover.getContents() != null && hover.getContents().isRight())
				.map(hover -> PlainText.of(hover.getContents().getRight().getValue())).orElse(null);
	}

	@Override
	public IRegion getHoverRegion(ITextViewer viewer, int offset) {
		return new Region(offset, 0);
	}
}
