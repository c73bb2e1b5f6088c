package padwright.workbench.findings;

import org.eclipse.core.resources.IMarker;

/**
 * One thing that is to be put right.
 *
 * @param severity as of markers: more is graver
 * @param line from 1
 */
record Found(IMarker marker, String text, int severity, int line) {

	static Found of(IMarker marker) {
		return new Found(marker, marker.getAttribute(IMarker.MESSAGE, ""),
				marker.getAttribute(IMarker.SEVERITY, IMarker.SEVERITY_INFO), marker.getAttribute(IMarker.LINE_NUMBER, 1));
	}
}
