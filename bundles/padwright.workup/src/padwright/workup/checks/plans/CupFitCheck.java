package padwright.workup.checks.plans;

import padwright.engine.length.Length;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.Assortment;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.CupFit;
import padwright.workup.service.KeyJob;
import padwright.workup.words.LengthWords;

/** Pad and backing disc come in a diameter that fits the cup. */
public final class CupFitCheck extends Check<KeyJob> {

	public CupFitCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		Length cup = job.key().flatMap(key -> key.cupDiameter()).orElse(null);
		if (cup == null) {
			return;
		}
		Place place = Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__KEY);
		job.fitting().pad().filter(pad -> job.padSize().isEmpty()).ifPresent(pad -> check(pad.getName(),
				pad.getDiameters(), cup, job, IssueCodes.PAD_DIAMETER, place, findings));
		job.fitting().backing().ifPresent(disc -> check(disc.getName(), disc.getDiameters(), cup, job,
				IssueCodes.BACKING_DIAMETER, place, findings));
	}

	private static void check(String article, Assortment diameters, Length cup, KeyJob job, String code, Place place,
			Findings findings) {
		if (diameters != null && CupFit.diameter(diameters, cup).isEmpty()) {
			findings.error(code, place,
					Advice.of(code, article, job.name(), millimetres(cup), millimetres(CupFit.SLACK)));
		}
	}

	private static String millimetres(Length length) {
		return LengthWords.millimetres(length, 3) + " mm";
	}
}
