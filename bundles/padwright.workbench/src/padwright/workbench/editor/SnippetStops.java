package padwright.workbench.editor;

import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.link.LinkedModeModel;
import org.eclipse.jface.text.link.LinkedModeUI;
import org.eclipse.jface.text.link.LinkedPosition;
import org.eclipse.jface.text.link.LinkedPositionGroup;
import org.eclipse.ui.texteditor.link.EditorLinkedModeUI;

import padwright.language.ide.completion.SnippetText;
import padwright.language.ide.completion.SnippetText.Stop;

/** The stops of an inserted snippet: the tabulator goes from one to the next; those of one number change together. */
final class SnippetStops {

	private final IDocument document;
	private final int start;
	private final Map<Integer, LinkedPositionGroup> groups = new LinkedHashMap<>();

	private SnippetStops(IDocument document, int start) {
		this.document = document;
		this.start = start;
	}

	/** Leads the typist through a snippet that was inserted at {@code start}; tells what is selected first. */
	static IRegion enter(ITextViewer viewer, int start, SnippetText snippet) throws BadLocationException {
		SnippetStops stops = new SnippetStops(viewer.getDocument(), start);
		int end = snippet.text().length();
		for (Stop stop : snippet.stops()) {
			if (stop.number() == SnippetText.LAST) {
				end = stop.offset();
			} else {
				stops.add(stop);
			}
		}
		return stops.enter(viewer, start + end);
	}

	private void add(Stop stop) throws BadLocationException {
		groups.computeIfAbsent(stop.number(), number -> new LinkedPositionGroup()).addPosition(position(stop));
	}

	private LinkedPosition position(Stop stop) {
		int offset = start + stop.offset();
		return stop.choice().isEmpty() ? new LinkedPosition(document, offset, stop.length(), stop.number())
				: new ChoicePosition(document, offset, stop.length(), stop.number(), stop.choice());
	}

	private IRegion enter(ITextViewer viewer, int end) throws BadLocationException {
		LinkedModeModel model = new LinkedModeModel();
		for (LinkedPositionGroup group : groups.values()) {
			model.addGroup(group);
		}
		model.forceInstall();
		LinkedModeUI steps = new EditorLinkedModeUI(model, viewer);
		steps.setExitPosition(viewer, end, 0, Integer.MAX_VALUE);
		steps.enter();
		return steps.getSelectedRegion();
	}
}
