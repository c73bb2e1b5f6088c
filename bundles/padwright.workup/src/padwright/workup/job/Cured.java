package padwright.workup.job;

import java.util.Comparator;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.plan.CorkState;
import padwright.model.plan.HeadCorkNote;
import padwright.model.plan.Inspection;
import padwright.model.plan.MechanismNote;
import padwright.model.plan.MechanismPart;
import padwright.model.plan.Plan;
import padwright.model.plan.Tenon;
import padwright.model.plan.TenonFit;
import padwright.model.plan.TenonNote;

/** What an inspection found, as the diary says it was left. */
public final class Cured {

	private Cured() {
	}

	/** How a tenon fits: sound once something was done about it. */
	public static TenonFit fit(Plan plan, Tenon tenon) {
		boolean isDone = JobRecord.of(plan).all(TenonNote.class).stream()
				.anyMatch(note -> note.getWork() != null && note.getJoint() == tenon.getJoint());
		return isDone ? TenonFit.SOUND : tenon.getFit();
	}

	/** The state of the head cork: sound once a new one is in. */
	public static CorkState headCork(Plan plan, Inspection inspection) {
		return JobRecord.of(plan).all(HeadCorkNote.class).stream().anyMatch(HeadCorkNote::isReplaced) ? CorkState.SOUND
				: inspection.getHeadCork();
	}

	/** The most play of a kind that was left; nothing where none was taken up. */
	public static Optional<Length> left(Plan plan, MechanismPart part) {
		return JobRecord.of(plan).all(MechanismNote.class).stream().filter(note -> note.getPart() == part)
				.flatMap(note -> Lengths.of(note.getLeft(), note).stream()).max(Comparator.naturalOrder());
	}
}
