package padwright.workbench.commands;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.texteditor.ITextEditor;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Positions;
import padwright.workbench.uses.UsesView;

/** Lists every place where the name at the caret is used. */
public final class UsesHandler extends EditorHandler {

	@Override
	void execute(Shell shell, ITextEditor editor, IDocument text, ITextSelection selection) {
		Optional<List<? extends Location>> places = Answers.of(text, (server, id) -> server.documents().references(
				new ReferenceParams(id, Positions.position(text, selection.getOffset()), new ReferenceContext(true))));
		try {
			UsesView view = (UsesView) editor.getSite().getPage().showView(UsesView.ID);
			view.show(List.copyOf(places.orElse(List.of())));
		} catch (PartInitException unopened) {
			ILog.of(UsesHandler.class).log(unopened.getStatus());
		}
	}
}
