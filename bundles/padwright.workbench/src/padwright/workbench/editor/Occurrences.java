package padwright.workbench.editor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModelExtension;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.IPostSelectionProvider;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.swt.graphics.Point;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Positions;

/** Marks every place of the text that means what the word at the caret means. */
public final class Occurrences extends ServerReconciler<List<DocumentHighlight>> {

	private static final String ANNOTATION = "org.eclipse.ui.genericeditor.text";

	private final ISelectionChangedListener onCaret = moved -> caretMoved();
	private final List<Annotation> marked = new ArrayList<>();
	private ITextViewer viewer;
	private volatile int caret;

	@Override
	public void install(ITextViewer textViewer) {
		viewer = textViewer;
		super.install(textViewer);
		if (textViewer.getSelectionProvider() instanceof IPostSelectionProvider provider) {
			provider.addPostSelectionChangedListener(onCaret);
		}
	}

	@Override
	public void uninstall() {
		if (viewer != null && viewer.getSelectionProvider() instanceof IPostSelectionProvider provider) {
			provider.removePostSelectionChangedListener(onCaret);
		}
		super.uninstall();
	}

	private void caretMoved() {
		Point selection = viewer.getSelectedRange();
		caret = selection.x;
		refresh();
	}

	@Override
	protected Optional<List<DocumentHighlight>> answer(IDocument text) {
		return Answers.of(text, (server, id) -> server.documents()
				.documentHighlight(new DocumentHighlightParams(id, Positions.position(text, caret)))
				.thenApply(found -> found.stream().<DocumentHighlight>map(place -> place).toList()));
	}

	@Override
	protected void show(List<DocumentHighlight> places, ITextViewer shown) {
		if (shown instanceof ISourceViewer source && source.getAnnotationModel() instanceof IAnnotationModelExtension model) {
			Map<Annotation, Position> anew = new HashMap<>();
			for (DocumentHighlight place : places) {
				IRegion region = Positions.region(shown.getDocument(), place.getRange());
				anew.put(new Annotation(ANNOTATION, false, null), new Position(region.getOffset(), region.getLength()));
			}
			model.replaceAnnotations(marked.toArray(Annotation[]::new), anew);
			marked.clear();
			marked.addAll(anew.keySet());
		}
	}
}
