package padwright.workbench.editor;

import java.util.List;
import java.util.concurrent.CompletableFuture;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.codemining.AbstractCodeMiningProvider;
import org.eclipse.jface.text.codemining.ICodeMining;
import org.eclipse.jface.text.codemining.ICodeMiningProvider;
import org.eclipse.jface.text.codemining.LineEndCodeMining;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Positions;

/** Shows the server's figures at the ends of lines. */
public final class Hints extends AbstractCodeMiningProvider {

	@Override
	public CompletableFuture<List<? extends ICodeMining>> provideCodeMinings(ITextViewer viewer,
			IProgressMonitor monitor) {
		IDocument text = viewer.getDocument();
		return Answers
				.later(text, (server, id) -> server.documents()
						.inlayHint(new InlayHintParams(id, Positions.range(text, 0, text.getLength()))))
				.thenApply(hints -> hints.orElse(List.of()).stream().flatMap(hint -> LineEnd.of(hint, text, this).stream())
						.toList());
	}

	private static final class LineEnd extends LineEndCodeMining {

		private LineEnd(IDocument text, int line, String label, ICodeMiningProvider provider)
				throws BadLocationException {
			super(text, line, provider);
			setLabel(label);
		}

		static List<LineEnd> of(InlayHint hint, IDocument text, ICodeMiningProvider provider) {
			try {
				return List.of(new LineEnd(text, hint.getPosition().getLine(), "   " + hint.getLabel().getLeft(),
						provider));
			} catch (BadLocationException textIsShorterByNow) {
				return List.of();
			}
		}
	}
}
