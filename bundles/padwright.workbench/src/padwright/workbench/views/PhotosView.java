package padwright.workbench.views;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;

import padwright.views.Palette;
import padwright.views.canvas.Photos;
import padwright.views.photos.PlanPhotos;
import padwright.workbench.bench.Bench;
import padwright.workbench.bench.OnBench;
import padwright.workbench.bench.PlanOnBench;

/** The photographs that the plan on the bench names. A double click shows one with the system's own program. */
public final class PhotosView extends BenchView<Photos> {

	public static final String ID = "padwright.workbench.photos";

	private Optional<PlanOnBench> shown = Optional.empty();
	private PhotoJob job;

	@Override
	protected Photos create(Composite parent, Palette palette, Bench bench) {
		Photos photos = new Photos(parent, palette);
		photos.onOpen(id -> photos.photos().file(id).map(Path::toString).ifPresent(Program::launch));
		job = new PhotoJob(photos);
		return photos;
	}

	@Override
	protected void show(Photos photos, OnBench onBench) {
		if (!onBench.plan().equals(shown)) {
			shown = onBench.plan();
			job.start(shown.map(plan -> PlanPhotos.of(plan.service())).orElse(PlanPhotos.NONE));
		}
	}

	@Override
	protected void setPalette(Photos photos, Palette palette) {
		photos.setPalette(palette);
	}
}
