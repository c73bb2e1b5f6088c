package padwright.workbench.findings;

import java.util.Optional;

import org.eclipse.core.resources.IMarker;
import org.eclipse.lsp4j.Diagnostic;

import padwright.workbench.session.Finding;

/**
 * One thing that is to be put right.
 *
 * @param marker may be gone, since each reading of a document makes all of its markers anew
 * @param finding what the marker stood for; nothing if it was gone before
 * @param severity as of markers: more is graver
 * @param line from 1
 */
record Found(IMarker marker, Optional<Diagnostic> finding, String text, int severity, int line) {

	static Found of(IMarker marker) {
		return new Found(marker, Finding.of(marker), marker.getAttribute(IMarker.MESSAGE, ""),
				marker.getAttribute(IMarker.SEVERITY, IMarker.SEVERITY_INFO), marker.getAttribute(IMarker.LINE_NUMBER, 1));
	}
}
