package padwright.workbench.editor;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Documents;
import padwright.workbench.session.LanguageSession;

/** What a document consists of, as a tree. */
final class Outline extends ContentOutlinePage {

	private static final int LEVELS_AT_FIRST = 2;

	private final ITextEditor editor;
	private final Consumer<Set<String>> onBuild = this::built;
	private final Job question = Job.createSystem("Outline", (ICoreRunnable) monitor -> ask());
	private boolean first = true;

	Outline(ITextEditor editor) {
		this.editor = editor;
	}

	@Override
	public void createControl(Composite parent) {
		super.createControl(parent);
		TreeViewer tree = getTreeViewer();
		tree.setUseHashlookup(true);
		tree.setComparer(SymbolIdentity.COMPARER);
		tree.setContentProvider(new Symbols());
		tree.setLabelProvider(LabelProvider.createTextProvider(symbol -> label((DocumentSymbol) symbol)));
		LanguageSession.get().builds().add(onBuild);
		LanguageSession.get().server().thenAccept(running -> question.schedule());
	}

	@Override
	public void dispose() {
		LanguageSession.get().builds().remove(onBuild);
		question.cancel();
		super.dispose();
	}

	private Optional<IDocument> text() {
		return Optional.ofNullable(editor.getDocumentProvider())
				.map(provider -> provider.getDocument(editor.getEditorInput()));
	}

	private void built(Set<String> uris) {
		if (text().flatMap(Documents::uri).filter(uris::contains).isPresent()) {
			question.schedule();
		}
	}

	private void ask() {
		Optional<List<DocumentSymbol>> symbols = text().flatMap(document -> Answers.of(document,
				(server, id) -> server.documents().documentSymbol(new DocumentSymbolParams(id)).thenApply(
						found -> found.stream().filter(one -> one.isRight()).map(one -> one.getRight()).toList())));
		symbols.ifPresent(found -> {
			if (getControl() != null && !getControl().isDisposed()) {
				getControl().getDisplay().asyncExec(() -> show(found));
			}
		});
	}

	private void show(List<DocumentSymbol> symbols) {
		if (getControl() == null || getControl().isDisposed()) {
			return;
		}
		TreeViewer tree = getTreeViewer();
		Object[] expanded = tree.getExpandedElements();
		tree.setInput(symbols);
		if (first) {
			tree.expandToLevel(LEVELS_AT_FIRST);
			first = false;
		} else {
			tree.setExpandedElements(expanded);
		}
	}

	private static String label(DocumentSymbol symbol) {
		return symbol.getDetail() == null || symbol.getDetail().isEmpty() ? symbol.getName()
				: symbol.getName() + "  " + symbol.getDetail();
	}

	@Override
	public void selectionChanged(SelectionChangedEvent event) {
		super.selectionChanged(event);
		if (getControl().isFocusControl()
				&& event.getSelection() instanceof StructuredSelection chosen
				&& chosen.getFirstElement() instanceof DocumentSymbol symbol) {
			Places.reveal(editor, symbol.getSelectionRange());
		}
	}

	private static final class Symbols implements ITreeContentProvider {

		@Override
		public Object[] getElements(Object input) {
			return ((List<?>) input).toArray();
		}

		@Override
		public Object[] getChildren(Object symbol) {
			return hasChildren(symbol) ? ((DocumentSymbol) symbol).getChildren().toArray() : new Object[0];
		}

		@Override
		public Object getParent(Object symbol) {
			return null;
		}

		@Override
		public boolean hasChildren(Object symbol) {
			List<DocumentSymbol> children = ((DocumentSymbol) symbol).getChildren();
			return children != null && !children.isEmpty();
		}
	}
}
