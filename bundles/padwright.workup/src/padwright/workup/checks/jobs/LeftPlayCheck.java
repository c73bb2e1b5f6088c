package padwright.workup.checks.jobs;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.plan.MechanismNote;
import padwright.model.plan.MechanismPart;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/**
 * Play that is left lets a pad be levelled to half a thou. End play moves a pad along its rod and hardly changes its seat;
 * wear lets it tilt, so that the limit is half of that; both limits are assumptions of ours, no source.
 */
public final class LeftPlayCheck extends Check<MechanismNote> {

	/** Most end play. */
	public static final Length END_PLAY = Length.thou("1");
	/** Most play across the rod. */
	public static final Length WEAR = Length.thou("0.5");

	public LeftPlayCheck() {
		super(MechanismNote.class);
	}

	@Override
	protected void check(MechanismNote note, Findings findings) {
		Lengths.of(note.getLeft(), note).ifPresent(left -> {
			if (note.getPart() == MechanismPart.END_PLAY && left.isLongerThan(END_PLAY)) {
				report(note, Advice.of("left-play.end", left, END_PLAY), findings);
			} else if (note.getPart() == MechanismPart.WEAR && left.isLongerThan(WEAR)) {
				report(note, Advice.of("left-play.wear", left, WEAR), findings);
			}
		});
	}

	private static void report(MechanismNote note, Advice advice, Findings findings) {
		findings.warning(IssueCodes.LEFT_PLAY, Place.of(note, PlanPackage.Literals.MECHANISM_NOTE__LEFT), advice);
	}
}
