package padwright.workbench.commands;

import java.util.List;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.texteditor.ITextEditor;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Positions;
import padwright.workbench.session.TextEdits;

/** Lays out the selection, or the whole text where nothing is selected. */
public final class FormatHandler extends EditorHandler {

	private static final FormattingOptions TABS = new FormattingOptions(4, false);

	@Override
	void execute(Shell shell, ITextEditor editor, IDocument text, ITextSelection selection) {
		List<? extends TextEdit> edits = Answers.<List<? extends TextEdit>>of(text, (server, id) -> selection
				.getLength() == 0 ? server.documents().formatting(new DocumentFormattingParams(id, TABS))
						: server.documents().rangeFormatting(new DocumentRangeFormattingParams(id, TABS,
								Positions.range(text, selection.getOffset(), selection.getLength()))))
				.orElse(List.of());
		TextEdits.apply(List.copyOf(edits), text);
	}
}
