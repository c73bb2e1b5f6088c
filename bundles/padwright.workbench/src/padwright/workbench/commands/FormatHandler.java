package padwright.workbench.commands;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.texteditor.ITextEditor;

import padwright.workbench.Messages;
import padwright.workbench.session.Answers;
import padwright.workbench.session.Finding;
import padwright.workbench.session.LanguageSession;
import padwright.workbench.session.Positions;
import padwright.workbench.session.StatusLine;
import padwright.workbench.session.TextEdits;
import padwright.workup.checks.IssueCodes;

/** Lays out the selection, or the whole text where nothing is selected; says why where nothing changes. */
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
		if (edits.isEmpty()) {
			StatusLine.tell(whyNot(editor.getEditorInput().getAdapter(IFile.class)), false);
		}
	}

	/** A text that cannot be read is left as it is, since a layout of it could lose words. */
	static String whyNot(IFile file) {
		if (LanguageSession.get().running().isEmpty()) {
			return Messages.get("format.notYet");
		}
		return firstUnreadable(file)
				.map(line -> Messages.get("format.unreadable", line)).orElseGet(() -> Messages.get("format.asItIs"));
	}

	private static Optional<Integer> firstUnreadable(IFile file) {
		try {
			return Arrays.stream(file.findMarkers(Finding.MARKER, true, IResource.DEPTH_ZERO))
					.filter(marker -> Finding.of(marker).filter(FormatHandler::isOfSyntax).isPresent())
					.map(marker -> marker.getAttribute(IMarker.LINE_NUMBER, 1)).min(Comparator.naturalOrder());
		} catch (CoreException gone) {
			return Optional.empty();
		}
	}

	private static boolean isOfSyntax(Diagnostic finding) {
		return finding.getCode() != null && IssueCodes.SYNTAX.equals(finding.getCode().getLeft());
	}
}
