package padwright.paper.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

import padwright.model.Resolved;
import padwright.model.plan.CorkState;
import padwright.model.plan.Inspection;
import padwright.model.plan.PadState;
import padwright.model.plan.TenonFit;
import padwright.paper.words.Messages;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Terms;

/** What a plan says was found, in a player's words. */
final class PlanFound {

	private static final Set<PadState> TOLD = EnumSet.of(PadState.WORN, PadState.TORN, PadState.TACKY, PadState.SWOLLEN,
			PadState.HARD, PadState.LOOSE, PadState.NOISY);

	private PlanFound() {
	}

	/** One sentence for all pads, by their states; nothing where none is noted. */
	static List<String> pads(ServicePlan plan) {
		List<String> found = new ArrayList<>();
		TOLD.forEach(state -> {
			List<String> keys = labels(plan, job -> job.key().isPresent() && job.service().isSetFound()
					&& job.service().getFound() == state);
			if (!keys.isEmpty()) {
				found.add(Messages.of("found.pad." + state.getLiteral(), String.join(", ", keys)));
			}
		});
		return found.isEmpty() ? List.of() : List.of(Messages.of("found.pads", String.join("; ", found)));
	}

	/** What was found at the instrument as a whole, as it came. */
	static List<String> instrument(ServicePlan plan) {
		List<String> found = new ArrayList<>();
		Inspection seen = plan.plan().getInspection();
		if (seen != null) {
			seen.getTenons().stream().filter(tenon -> tenon.getFit() != TenonFit.SOUND)
					.forEach(tenon -> Resolved.of(tenon.getJoint()).ifPresent(joint -> found.add(Messages
							.of(tenon.getFit() == TenonFit.LOOSE ? "found.loose" : "found.tight", Labels.of(joint)))));
			if (seen.isSetHeadCork() && seen.getHeadCork() != CorkState.SOUND) {
				found.add(Messages.of("found.headCork", Terms.of(seen.getHeadCork())));
			}
			if (seen.getPlay() != null || seen.getWear() != null) {
				found.add(Messages.of("found.play"));
			}
		}
		return found;
	}

	/** What the keys are called. */
	static List<String> labels(ServicePlan plan, Predicate<KeyJob> chosen) {
		return plan.jobs().stream().filter(chosen).map(job -> job.key().map(key -> key.label()).orElse(job.name())).toList();
	}
}
