package padwright.views.map;

import java.util.List;

import org.eclipse.emf.ecore.EObject;

import padwright.workup.checks.Finding;
import padwright.workup.service.KeyJob;

/** Which findings are about which row. */
public final class RowFindings {

	private RowFindings() {
	}

	/** Those about a row or anything in it, in their order. */
	public static List<Finding> of(KeyJob job, List<Finding> findings) {
		return findings.stream().filter(finding -> isIn(finding.place().element(), job.service())).toList();
	}

	private static boolean isIn(EObject element, EObject row) {
		for (EObject each = element; each != null; each = each.eContainer()) {
			if (each == row) {
				return true;
			}
		}
		return false;
	}
}
