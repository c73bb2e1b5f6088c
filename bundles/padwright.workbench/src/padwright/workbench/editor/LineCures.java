package padwright.workbench.editor;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.contentassist.ICompletionProposal;

import padwright.workbench.session.Documents;
import padwright.workbench.session.Finding;

/** The cures of all that is found on a line, wherever on it the caret is. */
final class LineCures {

	private LineCures() {
	}

	/** Without those of findings at the offset itself. */
	static List<ICompletionProposal> at(IDocument document, int offset) {
		Optional<IFile> file = Documents.uri(document).flatMap(Documents::file);
		try {
			IRegion line = document.getLineInformationOfOffset(offset);
			return file.stream().flatMap(known -> Arrays.stream(markers(known)))
					.filter(marker -> touches(marker, line.getOffset(), line.getOffset() + line.getLength()))
					.filter(marker -> !touches(marker, offset, offset)).flatMap(marker -> Fixes.of(marker).stream())
					.<ICompletionProposal>map(QuickAssist.Work::new).toList();
		} catch (BadLocationException goneMeanwhile) {
			return List.of();
		}
	}

	private static IMarker[] markers(IFile file) {
		try {
			return file.findMarkers(Finding.MARKER, true, IResource.DEPTH_ZERO);
		} catch (CoreException gone) {
			return new IMarker[0];
		}
	}

	private static boolean touches(IMarker marker, int start, int end) {
		return marker.getAttribute(IMarker.CHAR_START, -1) <= end && marker.getAttribute(IMarker.CHAR_END, -1) >= start;
	}
}
