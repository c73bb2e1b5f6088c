package padwright.workup.checks.jobs;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;

import padwright.model.plan.Photograph;
import padwright.model.plan.PlanPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

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
		if (path.startsWith("/") || path.contains("\\") || path.contains(":")) {
			findings.warning(IssueCodes.PHOTO_MISSING, place, Advice.of("photo-missing.relative", path));
		} else if (isMissing(photograph.eResource(), path)) {
			findings.warning(IssueCodes.PHOTO_MISSING, place, Advice.of(IssueCodes.PHOTO_MISSING, path));
		}
	}

	/** A document that is in no file yet has nothing beside it, and is not judged. */
	private static boolean isMissing(Resource document, String path) {
		URI place = document == null ? null : document.getURI();
		if (place == null || !place.isFile()) {
			return false;
		}
		try {
			return !Files.isRegularFile(Path.of(place.toFileString()).resolveSibling(path));
		} catch (InvalidPathException noPath) {
			return true;
		}
	}
}
