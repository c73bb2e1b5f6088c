package padwright.workup.checks.systems;

import java.time.LocalDate;

import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Revision;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** Revisions stand in the order of their days, since they are counted in it. */
public final class RevisionDateCheck extends Check<KeySystem> {

	public RevisionDateCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		LocalDate latest = LocalDate.MIN;
		for (Revision revision : system.getRevisions()) {
			LocalDate day = revision.getDate();
			if (day != null && day.isBefore(latest)) {
				findings.error(IssueCodes.REVISION_DATE, Place.of(revision, KeySystemPackage.Literals.REVISION__DATE),
						Advice.of(IssueCodes.REVISION_DATE, day, latest));
			} else if (day != null) {
				latest = day;
			}
		}
	}
}
