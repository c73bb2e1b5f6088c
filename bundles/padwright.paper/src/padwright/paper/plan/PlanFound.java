package padwright.paper.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

import padwright.model.Resolved;
import padwright.model.keysystem.Joint;
import padwright.model.plan.CorkState;
import padwright.model.plan.Inspection;
import padwright.model.plan.PadState;
import padwright.model.plan.Phase;
import padwright.model.plan.PlayTest;
import padwright.model.plan.PlayVerdict;
import padwright.model.plan.TenonFit;
import padwright.paper.words.Messages;
import padwright.workup.job.JobRecord;
import padwright.workup.parts.JointWords;
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
							.of(tenon.getFit() == TenonFit.LOOSE ? "found.loose" : "found.tight", the(joint)))));
			if (seen.isSetHeadCork() && seen.getHeadCork() != CorkState.SOUND) {
				found.add(Messages.of("found.headCork", Terms.of(seen.getHeadCork())));
			}
			if (seen.getPlay() != null || seen.getWear() != null) {
				found.add(Messages.of("found.play"));
			}
		}
		return found;
	}

	/** A joint at the beginning of a sentence. */
	static String the(Joint joint) {
		return JointWords.known(joint).map(known -> Messages.of("done.knownJoint", known))
				.orElseGet(() -> Messages.of("done.joint", Labels.of(joint)));
	}

	/** Notes that did not answer as they should when the instrument came. */
	static List<String> notes(ServicePlan plan) {
		List<String> found = new ArrayList<>();
		addNotes(plan, PlayVerdict.WEAK, "found.weak", found);
		addNotes(plan, PlayVerdict.SILENT, "found.silent", found);
		return found;
	}

	private static void addNotes(ServicePlan plan, PlayVerdict verdict, String key, List<String> found) {
		List<String> notes = JobRecord.of(plan.plan()).all(PlayTest.class).stream()
				.filter(test -> test.getPhase() == Phase.BEFORE && test.getVerdict() == verdict)
				.flatMap(test -> test.getNotes().stream()).distinct().toList();
		if (!notes.isEmpty()) {
			found.add(Messages.of(key, String.join(", ", notes)));
		}
	}

	/** What the keys are called. */
	static List<String> labels(ServicePlan plan, Predicate<KeyJob> chosen) {
		return plan.jobs().stream().filter(chosen).map(job -> job.key().map(key -> key.label()).orElse(job.name())).toList();
	}
}
