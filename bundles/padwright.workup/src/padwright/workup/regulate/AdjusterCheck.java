package padwright.workup.regulate;

import padwright.model.keysystem.Adjuster;
import padwright.model.keysystem.AdjusterKind;
import padwright.model.keysystem.KeySystemPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A screw has a pitch, and only a screw has one. */
public final class AdjusterCheck extends Check<Adjuster> {

	public AdjusterCheck() {
		super(Adjuster.class);
	}

	@Override
	protected void check(Adjuster adjuster, Findings findings) {
		boolean threaded = adjuster.getThread() != null || adjuster.getPitch() != null;
		if (threaded != (adjuster.getKind() == AdjusterKind.SCREW)) {
			findings.error(IssueCodes.ADJUSTER_THREAD, Place.of(adjuster, KeySystemPackage.Literals.ADJUSTER__KIND),
					new Advice(threaded ? "Only a screw has a thread" : "This screw has no thread",
							"turns are travel divided by the pitch",
							threaded ? "Take the thread away" : "Write screw \"UNM 1.00\" or screw pitch 0.25 mm"));
		} else if (adjuster.getThread() != null && Threads.named(adjuster.getThread()).isEmpty()) {
			findings.error(IssueCodes.ADJUSTER_THREAD, Place.of(adjuster, KeySystemPackage.Literals.ADJUSTER__THREAD),
					new Advice("There is no thread " + adjuster.getThread() + " in the tables",
							"its pitch is needed to tell turns",
							"Write UNM 0.30 to 1.40, 0 BA to 16 BA, or pitch and the pitch"));
		}
	}
}
