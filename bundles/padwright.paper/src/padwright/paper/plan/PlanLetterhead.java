package padwright.paper.plan;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import padwright.drawing.java2d.PictureFile;
import padwright.paper.page.Letterhead;
import padwright.workup.job.Letterheads;
import padwright.workup.service.ServicePlan;

/** The letterhead of a plan's papers. A logo that is not there, or is no picture, is told of and left out. */
final class PlanLetterhead {

	private PlanLetterhead() {
	}

	static Letterhead of(ServicePlan plan) {
		return Letterheads.of(plan).map(PlanLetterhead::read).orElse(Letterhead.NONE);
	}

	private static Letterhead read(padwright.model.stock.Letterhead written) {
		if (written.getLogo() == null) {
			return new Letterhead(written.getLines(), Optional.empty(), Optional.empty());
		}
		Optional<Path> file = Letterheads.logo(written);
		if (file.isEmpty()) {
			return new Letterhead(written.getLines(), Optional.empty(), Optional.of(Letterheads.missing(written)));
		}
		try {
			return new Letterhead(written.getLines(), Optional.of(PictureFile.read(file.get())), Optional.empty());
		} catch (IOException noPicture) {
			return new Letterhead(written.getLines(), Optional.empty(), Optional.of(Letterheads.unread(written)));
		}
	}
}
