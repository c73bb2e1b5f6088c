package padwright.workup.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import padwright.model.Resolved;
import padwright.model.plan.KeyService;
import padwright.workup.checks.Finding;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.ModelChecks;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/** What is so wrong with the rows of a plan that an answer from them would mislead. */
final class Obstacles {

	private static final Set<String> CODES = Set.of(IssueCodes.UNIT_SUSPECT, IssueCodes.TOO_FINE,
			IssueCodes.READING_COUNT, IssueCodes.DASH_NOT_GRADED, IssueCodes.OUT_NOT_IN_PLACE,
			IssueCodes.READING_UNKNOWN_LEAF, IssueCodes.HOURS_MISSING,
			IssueCodes.HOUR_TWICE, IssueCodes.BACKING_MISSING, IssueCodes.PAD_DEPTH,
			IssueCodes.DUPLICATE_SERVICE);

	private final Map<EObject, List<Phrase>> byRow = new LinkedHashMap<>();

	Obstacles(ServicePlan plan) {
		ModelChecks.check(plan.plan()).stream().filter(finding -> CODES.contains(finding.code())).forEach(this::add);
	}

	private void add(Finding finding) {
		for (EObject element = finding.place().element(); element != null; element = element.eContainer()) {
			if (element instanceof KeyService) {
				byRow.computeIfAbsent(element, row -> new ArrayList<>())
						.add(Phrase.of("unsolved.finding", finding.advice().what(), finding.advice().cure()));
			}
		}
	}

	/** Why a row cannot be solved as it stands; empty if it can. */
	List<Phrase> of(KeyJob job) {
		if (Resolved.of(job.plan().plan().getSystem()).isEmpty()) {
			return List.of(Phrase.of("unsolved.noSystem"));
		}
		return job.key().isEmpty() ? List.of(Phrase.of("unsolved.noKey"))
				: byRow.getOrDefault(job.service(), List.of()).stream().distinct().toList();
	}
}
