package padwright.workbench.editor;

import org.eclipse.jface.viewers.IElementComparer;
import org.eclipse.lsp4j.DocumentSymbol;

/** Takes a symbol for the same by its name and kind, so that a tree stays unfolded as it was when the text changes. */
final class SymbolIdentity implements IElementComparer {

	static final SymbolIdentity COMPARER = new SymbolIdentity();

	private SymbolIdentity() {
	}

	@Override
	public boolean equals(Object one, Object other) {
		return one instanceof DocumentSymbol symbol && other instanceof DocumentSymbol second
				? symbol.getName().equals(second.getName()) && symbol.getKind() == second.getKind()
				: one == other;
	}

	@Override
	public int hashCode(Object element) {
		return element instanceof DocumentSymbol symbol ? symbol.getName().hashCode() : System.identityHashCode(element);
	}
}
