package padwright.workbench.editor;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextInputListener;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.reconciler.IReconciler;
import org.eclipse.jface.text.reconciler.IReconcilingStrategy;
import org.eclipse.swt.custom.StyledText;

import padwright.language.ide.server.LocalServer;
import padwright.workbench.session.Documents;
import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.Stamps;

/**
 * Keeps something of an editor as the server sees the text: asks again whenever the server has read the text, or one
 * that it depends on, anew. Questions are asked in the background; the answer is shown only if it is of the text shown.
 *
 * @param <A> the kind of answer
 */
abstract class ServerReconciler<A> implements IReconciler, ITextInputListener {

	private final Consumer<Set<String>> onBuild = this::built;
	private final Job question = Job.createSystem(getClass().getSimpleName(), (ICoreRunnable) monitor -> ask());
	private ITextViewer viewer;
	private volatile IDocument document;
	private volatile String uri;

	ServerReconciler() {
		question.setPriority(Job.SHORT);
	}

	/** Asks the server; called in the background. */
	protected abstract Optional<? extends A> answer(IDocument text);

	/** Shows an answer about the text that {@code shown} shows; called in the UI thread. */
	protected abstract void show(A answer, ITextViewer shown);

	@Override
	public void install(ITextViewer textViewer) {
		viewer = textViewer;
		viewer.addTextInputListener(this);
		LanguageSession.get().builds().add(onBuild);
		inputDocumentChanged(null, viewer.getDocument());
		LanguageSession.get().server().thenAccept(running -> ready(running));
	}

	@Override
	public void uninstall() {
		LanguageSession.get().builds().remove(onBuild);
		if (viewer != null) {
			viewer.removeTextInputListener(this);
		}
		question.cancel();
		document = null;
		uri = null;
	}

	/** Called once the server runs, in any thread. */
	protected void ready(LocalServer running) {
		refresh();
	}

	@Override
	public void inputDocumentAboutToBeChanged(IDocument old, IDocument anew) {
		// Nothing is bound to the old one.
	}

	@Override
	public void inputDocumentChanged(IDocument old, IDocument anew) {
		document = anew;
		uri = anew == null ? null : Documents.uri(anew).orElse(null);
		refresh();
	}

	private void built(Set<String> uris) {
		if (uri != null && uris.contains(uri)) {
			refresh();
		}
	}

	/** Asks anew; from any thread. */
	protected final void refresh() {
		if (uri != null && LanguageSession.get().running().isPresent()) {
			question.schedule();
		}
	}

	private void ask() {
		IDocument asked = document;
		if (asked == null) {
			return;
		}
		long before = Stamps.of(asked);
		answer(asked).ifPresent(answer -> {
			StyledText widget = viewer.getTextWidget();
			if (widget != null && !widget.isDisposed()) {
				widget.getDisplay().asyncExec(() -> showIfFresh(answer, asked, before));
			}
		});
	}

	/** An answer that comes too late is left: the change that made it old brings a new one. */
	private void showIfFresh(A answer, IDocument asked, long before) {
		StyledText widget = viewer.getTextWidget();
		if (document == asked && Stamps.of(asked) == before && widget != null && !widget.isDisposed()) {
			show(answer, viewer);
		}
	}

	@Override
	public IReconcilingStrategy getReconcilingStrategy(String contentType) {
		return null;
	}
}
