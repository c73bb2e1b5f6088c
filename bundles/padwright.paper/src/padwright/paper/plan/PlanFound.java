package padwright.paper.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import padwright.model.Present;
import padwright.model.plan.CorkState;
import padwright.model.plan.Inspection;
import padwright.model.plan.PadState;
import padwright.model.plan.TenonFit;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** What a plan says was found, in a player's words. */
final class PlanFound {

	private static final Map<PadState, String> STATES = new EnumMap<>(Map.of(PadState.WORN, "worn", PadState.TORN, "torn",
			PadState.TACKY, "sticky", PadState.SWOLLEN, "swollen", PadState.HARD, "hard", PadState.LOOSE, "loose",
			PadState.NOISY, "noisy"));

	private PlanFound() {
	}

	/** One sentence for all pads, by their states; nothing where none is noted. */
	static List<String> pads(ServicePlan plan) {
		List<String> found = new ArrayList<>();
		STATES.forEach((state, word) -> {
			List<String> keys = labels(plan, job -> job.key().isPresent() && job.service().isSetFound()
					&& job.service().getFound() == state);
			if (!keys.isEmpty()) {
				found.add(word + " at " + String.join(", ", keys));
			}
		});
		return found.isEmpty() ? List.of() : List.of("Pads that we found: " + String.join("; ", found) + ".");
	}

	/** What was found at the instrument as a whole, as it came. */
	static List<String> instrument(ServicePlan plan) {
		List<String> found = new ArrayList<>();
		Inspection seen = plan.plan().getInspection();
		if (seen != null) {
			seen.getTenons().stream().filter(tenon -> tenon.getFit() != TenonFit.SOUND)
					.forEach(tenon -> Present.of(tenon.getJoint()).ifPresent(joint -> found.add("The " + Labels.of(joint)
							+ " joint goes together " + (tenon.getFit() == TenonFit.LOOSE ? "too loosely." : "too tightly."))));
			if (seen.isSetHeadCork() && seen.getHeadCork() != CorkState.SOUND) {
				found.add("The cork in the head joint is " + seen.getHeadCork().getLiteral() + ".");
			}
			if (seen.getPlay() != null || seen.getWear() != null) {
				found.add("The keys have play where they turn.");
			}
		}
		return found;
	}

	/** What the keys are called. */
	static List<String> labels(ServicePlan plan, Predicate<KeyJob> chosen) {
		return plan.jobs().stream().filter(chosen).map(job -> job.key().map(key -> key.label()).orElse(job.name())).toList();
	}
}
