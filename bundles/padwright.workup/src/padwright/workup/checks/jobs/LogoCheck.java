package padwright.workup.checks.jobs;

import java.nio.file.Files;

import padwright.model.stock.Letterhead;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.job.FileBeside;

/** The logo of a letterhead lies where its stock says, below or beside the folder of the stock. */
public final class LogoCheck extends Check<Letterhead> {

	public LogoCheck() {
		super(Letterhead.class);
	}

	@Override
	protected void check(Letterhead letterhead, Findings findings) {
		String path = letterhead.getLogo();
		if (path == null) {
			return;
		}
		Place place = Place.of(letterhead, StockPackage.Literals.LETTERHEAD__LOGO);
		if (!FileBeside.isRelative(path)) {
			findings.warning(IssueCodes.LOGO_MISSING, place, Advice.of("logo-missing.relative", path));
		} else if (FileBeside.of(letterhead, path).filter(file -> !Files.isRegularFile(file)).isPresent()) {
			findings.warning(IssueCodes.LOGO_MISSING, place, Advice.of(IssueCodes.LOGO_MISSING, path));
		}
	}
}
