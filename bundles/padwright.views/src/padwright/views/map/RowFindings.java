package padwright.views.map;

import java.util.List;

import org.eclipse.emf.ecore.EObject;

import padwright.model.systems.EffectiveKey;
import padwright.workup.checks.Finding;
import padwright.workup.service.KeyJob;

/** Which findings are about which row, or key of a system. */
public final class RowFindings {

	private RowFindings() {
	}

	/** Those about a row or anything in it, in their order. */
	public static List<Finding> of(KeyJob job, List<Finding> findings) {
		return of(job.service(), findings);
	}

	/** Those about a key of a system, as it is defined and as systems change it, in their order. */
	static List<Finding> of(EffectiveKey key, List<Finding> findings) {
		return key.features().stream().flatMap(features -> of(features, findings).stream()).toList();
	}

	private static List<Finding> of(EObject part, List<Finding> findings) {
		return findings.stream().filter(finding -> isIn(finding.place().element(), part)).toList();
	}

	private static boolean isIn(EObject element, EObject part) {
		for (EObject each = element; each != null; each = each.eContainer()) {
			if (each == part) {
				return true;
			}
		}
		return false;
	}
}
