package padwright.language.ide.fixes;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import padwright.language.edit.EstimateEdits;
import padwright.language.edit.TextEdit;
import padwright.language.ide.words.Messages;
import padwright.workup.money.EstimateDraft;
import padwright.workup.service.ServicePlan;

/** Drafts the options of an estimate from what a plan says was found. */
public final class DraftEstimate {

	private DraftEstimate() {
	}

	/** Nothing where the plan has an estimate, says of no pad how it was found, or nothing has a price. */
	public static Optional<Fix> of(ServicePlan service) {
		if (EstimateEdits.isThere(service.plan()) || service.jobs().stream().noneMatch(job -> job.service().isSetFound())) {
			return Optional.empty();
		}
		EstimateDraft draft = EstimateDraft.of(service);
		List<TextEdit> edits = draft.options().isEmpty() ? List.of() : EstimateEdits.of(service.plan(), draft, LocalDate.now());
		return edits.isEmpty() ? Optional.empty() : Optional.of(new Fix(Messages.of("fix.draftEstimate"), edits));
	}
}
