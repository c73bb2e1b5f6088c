package padwright.workbench.editor;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextPresentationListener;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.ITextViewerExtension4;
import org.eclipse.jface.text.TextPresentation;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.jface.util.PropertyChangeEvent;
import org.eclipse.lsp4j.SemanticTokensParams;

import padwright.workbench.session.Answers;

/** Colours each word by what it is. Until the next answer of the server, the colours move along with their words. */
public final class SemanticColours extends ServerReconciler<List<ColouredWord>>
		implements IPropertyChangeListener, ITextPresentationListener, IDocumentListener {

	private List<ColouredWord> words = List.of();
	private ITextViewer viewer;

	@Override
	public void install(ITextViewer textViewer) {
		viewer = textViewer;
		if (textViewer instanceof ITextViewerExtension4 presenting) {
			presenting.addTextPresentationListener(this);
		}
		JFaceResources.getColorRegistry().addListener(this);
		super.install(textViewer);
	}

	@Override
	public void uninstall() {
		JFaceResources.getColorRegistry().removeListener(this);
		if (viewer instanceof ITextViewerExtension4 presenting) {
			presenting.removeTextPresentationListener(this);
		}
		super.uninstall();
	}

	@Override
	public void inputDocumentAboutToBeChanged(IDocument old, IDocument anew) {
		if (old != null) {
			old.removeDocumentListener(this);
		}
		words = List.of();
	}

	@Override
	public void inputDocumentChanged(IDocument old, IDocument anew) {
		if (anew != null) {
			anew.addDocumentListener(this);
		}
		super.inputDocumentChanged(old, anew);
	}

	@Override
	public void propertyChange(PropertyChangeEvent colourChange) {
		if (colourChange.getProperty().startsWith(TextStyles.PREFIX)) {
			viewer.invalidateTextPresentation();
		}
	}

	@Override
	protected Optional<List<ColouredWord>> answer(IDocument text) {
		return Answers.of(text, (server, id) -> server.documents().semanticTokensFull(new SemanticTokensParams(id))
				.thenApply(tokens -> ColouredWord.all(tokens.getData(),
						server.capabilities().getSemanticTokensProvider().getLegend().getTokenTypes(), text)));
	}

	@Override
	protected void show(List<ColouredWord> answer, ITextViewer shown) {
		if (!answer.equals(words)) {
			words = answer;
			shown.invalidateTextPresentation();
		}
	}

	@Override
	public void applyTextPresentation(TextPresentation presentation) {
		IRegion part = presentation.getExtent();
		if (part == null) {
			return;
		}
		for (ColouredWord word : words) {
			if (word.offset() < part.getOffset() + part.getLength() && word.end() > part.getOffset()) {
				presentation.mergeStyleRange(TextStyles.range(word));
			}
		}
	}

	@Override
	public void documentAboutToBeChanged(DocumentEvent change) {
		words = words.stream().flatMap(word -> word.after(change).stream()).toList();
	}

	@Override
	public void documentChanged(DocumentEvent change) {
		// The server is asked once it has read the change.
	}
}
