package padwright.workbench.editor;

import java.util.Collections;
import java.util.Map;
import java.util.WeakHashMap;

import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.contentassist.ContentAssistEvent;
import org.eclipse.jface.text.contentassist.ICompletionListener;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.source.ISourceViewerExtension4;

/** Which lists of offers came up by themselves while somebody was typing, and which were asked for. */
final class ListsByThemselves {

	private static final Map<ITextViewer, Boolean> OPEN = Collections.synchronizedMap(new WeakHashMap<>());

	private ListsByThemselves() {
	}

	/** Takes note of the lists of a viewer from now on. */
	static void watch(ITextViewer viewer) {
		if (viewer instanceof ISourceViewerExtension4 source && source.getContentAssistantFacade() != null) {
			source.getContentAssistantFacade().addCompletionListener(new Watch(viewer));
		}
	}

	/** Whether the list that is open, or about to be, came up by itself. */
	static boolean isOne(ITextViewer viewer) {
		return OPEN.getOrDefault(viewer, false);
	}

	private record Watch(ITextViewer viewer) implements ICompletionListener {

		@Override
		public void assistSessionStarted(ContentAssistEvent event) {
			OPEN.put(viewer, event.isAutoActivated);
		}

		@Override
		public void assistSessionEnded(ContentAssistEvent event) {
			OPEN.remove(viewer);
		}

		@Override
		public void selectionChanged(ICompletionProposal proposal, boolean smartToggle) {
			// Only beginnings and ends count.
		}
	}
}
