package padwright.workbench.app;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.commands.operations.ObjectUndoContext;
import org.eclipse.jface.text.IDocument;
import org.eclipse.text.undo.DocumentUndoManagerRegistry;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.operations.RedoActionHandler;
import org.eclipse.ui.operations.UndoActionHandler;
import org.eclipse.ui.texteditor.ITextEditor;

import padwright.workbench.editor.PlanEditor;

/** Has undo and redo of the text in the active editor work in every view: what views change is in that text. */
final class UndoEverywhere implements IPartListener2 {

	/** Where no text is open. */
	private static final IUndoContext NOTHING = new ObjectUndoContext(new Object());

	private final IWorkbenchWindow window;
	private final Set<ViewUndo> views = new HashSet<>();

	private UndoEverywhere(IWorkbenchWindow window) {
		this.window = window;
	}

	/** Begins with what is open already. */
	static void in(IWorkbenchWindow window) {
		UndoEverywhere all = new UndoEverywhere(window);
		window.getPartService().addPartListener(all);
		for (var view : window.getActivePage().getViewReferences()) {
			all.add(view.getView(false));
		}
	}

	private void add(IWorkbenchPart part) {
		if (part instanceof IViewPart view
				&& view.getViewSite().getActionBars().getGlobalActionHandler(ActionFactory.UNDO.getId()) == null) {
			views.add(new ViewUndo(view.getViewSite(), context()));
		}
	}

	private IUndoContext context() {
		return Optional.ofNullable(window.getActivePage()).map(page -> page.getActiveEditor())
				.filter(PlanEditor.class::isInstance).map(PlanEditor.class::cast).flatMap(UndoEverywhere::text)
				.map(DocumentUndoManagerRegistry::getDocumentUndoManager).map(undo -> undo.getUndoContext())
				.orElse(NOTHING);
	}

	private static Optional<IDocument> text(ITextEditor editor) {
		return Optional.ofNullable(editor.getDocumentProvider())
				.map(provider -> provider.getDocument(editor.getEditorInput()));
	}

	private void follow() {
		IUndoContext context = context();
		views.forEach(view -> view.follow(context));
	}

	@Override
	public void partOpened(IWorkbenchPartReference part) {
		add(part.getPart(false));
	}

	@Override
	public void partActivated(IWorkbenchPartReference part) {
		add(part.getPart(false));
		follow();
	}

	@Override
	public void partBroughtToTop(IWorkbenchPartReference part) {
		follow();
	}

	@Override
	public void partClosed(IWorkbenchPartReference part) {
		views.removeIf(view -> view.isOf(part.getPart(false)));
		follow();
	}

	/** The two actions of one view. */
	private static final class ViewUndo {

		private final IViewSite site;
		private final UndoActionHandler undo;
		private final RedoActionHandler redo;

		ViewUndo(IViewSite site, IUndoContext context) {
			this.site = site;
			undo = new UndoActionHandler(site, context);
			redo = new RedoActionHandler(site, context);
			site.getActionBars().setGlobalActionHandler(ActionFactory.UNDO.getId(), undo);
			site.getActionBars().setGlobalActionHandler(ActionFactory.REDO.getId(), redo);
			site.getActionBars().updateActionBars();
		}

		void follow(IUndoContext context) {
			undo.setContext(context);
			redo.setContext(context);
		}

		boolean isOf(IWorkbenchPart part) {
			return part != null && part.getSite() == site;
		}
	}
}
