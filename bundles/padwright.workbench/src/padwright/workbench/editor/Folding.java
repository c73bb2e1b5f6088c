package padwright.workbench.editor;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.projection.ProjectionAnnotation;
import org.eclipse.jface.text.source.projection.ProjectionAnnotationModel;
import org.eclipse.jface.text.source.projection.ProjectionViewer;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;

import padwright.workbench.session.Answers;

/** Lets elements of several lines be folded; what is folded stays so as long as it is there. */
public final class Folding extends ServerReconciler<List<FoldingRange>> {

	@Override
	protected Optional<List<FoldingRange>> answer(IDocument text) {
		return Answers.of(text, (server, id) -> server.documents().foldingRange(new FoldingRangeRequestParams(id)));
	}

	@Override
	protected void show(List<FoldingRange> ranges, ITextViewer viewer) {
		if (viewer instanceof ProjectionViewer projection) {
			projection.enableProjection();
			if (projection.getProjectionAnnotationModel() != null) {
				update(projection.getProjectionAnnotationModel(), ranges, viewer.getDocument());
			}
		}
	}

	private static void update(ProjectionAnnotationModel model, List<FoldingRange> ranges, IDocument text) {
		Map<Annotation, Position> anew = new HashMap<>();
		ranges.forEach(range -> lines(range, text).ifPresent(lines -> anew.put(new ProjectionAnnotation(), lines)));
		Map<Position, Annotation> gone = new HashMap<>();
		model.getAnnotationIterator().forEachRemaining(old -> gone.put(model.getPosition(old), old));
		anew.values().removeIf(lines -> gone.remove(lines) != null);
		model.modifyAnnotations(gone.values().toArray(Annotation[]::new), anew, null);
	}

	private static Optional<Position> lines(FoldingRange range, IDocument text) {
		try {
			int start = text.getLineOffset(range.getStartLine());
			int after = range.getEndLine() + 1;
			int end = after < text.getNumberOfLines() ? text.getLineOffset(after) : text.getLength();
			return range.getEndLine() > range.getStartLine() ? Optional.of(new Position(start, end - start))
					: Optional.empty();
		} catch (BadLocationException textIsShorterByNow) {
			return Optional.empty();
		}
	}
}
