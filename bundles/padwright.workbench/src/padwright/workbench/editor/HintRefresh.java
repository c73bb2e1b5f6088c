package padwright.workbench.editor;

import java.util.Optional;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.source.ISourceViewerExtension5;

/** Has the figures at line ends asked for anew: they change with the stock and system too. */
public final class HintRefresh extends ServerReconciler<Boolean> {

	@Override
	protected Optional<Boolean> answer(IDocument text) {
		return Optional.of(true);
	}

	@Override
	protected void show(Boolean answer, ITextViewer viewer) {
		if (viewer instanceof ISourceViewerExtension5 source) {
			source.updateCodeMinings();
		}
	}
}
