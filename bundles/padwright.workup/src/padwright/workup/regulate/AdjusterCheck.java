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
					threaded ? Advice.of("adjuster-thread.noScrew") : Advice.of("adjuster-thread.noThread"));
		} else if (adjuster.getThread() != null && Threads.named(adjuster.getThread()).isEmpty()) {
			findings.error(IssueCodes.ADJUSTER_THREAD, Place.of(adjuster, KeySystemPackage.Literals.ADJUSTER__THREAD),
					Advice.of("adjuster-thread.unknown", adjuster.getThread()));
		}
	}
}
