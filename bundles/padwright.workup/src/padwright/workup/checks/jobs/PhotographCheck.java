package padwright.workup.checks.jobs;

import java.nio.file.Files;

import padwright.model.plan.Photograph;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.job.FileBeside;

/** A photograph lies where its plan says, below or beside the folder of the plan. */
public final class PhotographCheck extends Check<Photograph> {

	public PhotographCheck() {
		super(Photograph.class);
	}

	@Override
	protected void check(Photograph photograph, Findings findings) {
		String path = photograph.getPath();
		if (path == null) {
			return;
		}
		Place place = Place.of(photograph, PlanPackage.Literals.PHOTOGRAPH__PATH);
		if (!FileBeside.isRelative(path)) {
			findings.warning(IssueCodes.PHOTO_MISSING, place, Advice.of("photo-missing.relative", path));
		} else if (FileBeside.of(photograph, path).filter(file -> !Files.isRegularFile(file)).isPresent()) {
			findings.warning(IssueCodes.PHOTO_MISSING, place, Advice.of(IssueCodes.PHOTO_MISSING, path));
		}
	}
}
