package padwright.workbench.editor;

import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.texteditor.BasicTextEditorActionContributor;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.eclipse.ui.texteditor.ITextEditorExtension;
import org.eclipse.ui.texteditor.StatusLineContributionItem;

/** What the editor adds to the bars of the window: the place of the caret. Its work stands in menus of our own. */
public final class EditorBars extends BasicTextEditorActionContributor {

	private static final int WIDTH = 14;

	private final StatusLineContributionItem place = new StatusLineContributionItem(
			ITextEditorActionConstants.STATUS_CATEGORY_INPUT_POSITION, true, WIDTH);

	@Override
	public void contributeToMenu(IMenuManager menu) {
		// Nothing but what the window has by itself.
	}

	@Override
	public void contributeToToolBar(IToolBarManager tools) {
		// Nothing.
	}

	@Override
	public void contributeToStatusLine(IStatusLineManager line) {
		line.add(place);
	}

	@Override
	public void setActiveEditor(IEditorPart editor) {
		super.setActiveEditor(editor);
		if (editor instanceof ITextEditorExtension text) {
			text.setStatusField(place, ITextEditorActionConstants.STATUS_CATEGORY_INPUT_POSITION);
		}
	}
}
