package padwright.workup.inspection;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.plan.CorkState;
import padwright.model.plan.Inspection;
import padwright.model.plan.MechanismPart;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Tenon;
import padwright.model.plan.TenonFit;
import padwright.workup.job.Cured;
import padwright.workup.parts.Labels;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;
import padwright.workup.words.Terms;

/** What the findings at the instrument as a whole ask for; common practice, no source. */
final class InstrumentWork {

	/** Half-thou film once around adds one thou to a diameter. */
	private static final Length FILM = Length.thou("0.5");

	private InstrumentWork() {
	}

	static List<Recommendation> of(ServicePlan plan) {
		List<Recommendation> work = new ArrayList<>();
		Inspection seen = plan.plan().getInspection();
		if (seen != null) {
			seen.getTenons().stream().filter(tenon -> Cured.fit(plan.plan(), tenon) == tenon.getFit())
					.forEach(tenon -> tenon(tenon).ifPresent(work::add));
			if (seen.isSetHeadCork() && Cured.headCork(plan.plan(), seen) != CorkState.SOUND) {
				work.add(headCork(seen));
			}
			Lengths.of(seen.getPlay(), seen)
					.filter(play -> Cured.left(plan.plan(), MechanismPart.END_PLAY).isEmpty()).ifPresent(play -> work.add(new Recommendation(seen,
					PlanPackage.Literals.INSPECTION__PLAY, Phrase.of("work.mechanism"),
					Phrase.of("work.endPlay", play),
					Phrase.of("work.play.work"), Phrase.of("work.play.reason"))));
		}
		return work;
	}

	/** Where empty cups were read and nothing says how far they should stand off. */
	static Optional<Recommendation> bed(ServicePlan plan) {
		return plan.bed().isPresent() || plan.jobs().stream().allMatch(job -> EmptyCup.split(job).isEmpty())
				? Optional.empty()
				: Optional.of(new Recommendation(plan.plan(), PlanPackage.Literals.PLAN__BED, Phrase.of("work.plan"),
						Phrase.of("work.noBed"), Phrase.of("work.noBed.work"), Phrase.of("work.noBed.reason")));
	}

	private static Recommendation headCork(Inspection seen) {
		return new Recommendation(seen, PlanPackage.Literals.INSPECTION__HEAD_CORK, Phrase.of("work.headCork"),
				Terms.phrase(seen.getHeadCork()), Phrase.of("work.headCork.work"),
				Phrase.of("work.headCork.reason"));
	}

	private static Optional<Recommendation> tenon(Tenon tenon) {
		if (tenon.getFit() == TenonFit.SOUND || Resolved.of(tenon.getJoint()).isEmpty()) {
			return Optional.empty();
		}
		Phrase where = Phrase.of("work.tenon", Labels.of(tenon.getJoint()));
		return Optional.of(tenon.getFit() == TenonFit.LOOSE
				? new Recommendation(tenon, PlanPackage.Literals.TENON__FIT, where, loose(tenon), film(tenon),
						Phrase.of("work.loose.reason"))
				: new Recommendation(tenon, PlanPackage.Literals.TENON__FIT, where, Phrase.of("work.tight"),
						Phrase.of("work.tight.work"), Phrase.of("work.tight.reason")));
	}

	private static Phrase loose(Tenon tenon) {
		return Lengths.of(tenon.getGap(), tenon).map(gap -> Phrase.of("work.looseBy", gap))
				.orElseGet(() -> Phrase.of("work.loose"));
	}

	private static Phrase film(Tenon tenon) {
		return Lengths.of(tenon.getGap(), tenon).map(gap -> {
			BigDecimal added = BigDecimal.valueOf(2 * FILM.nanometres());
			int turns = BigDecimal.valueOf(gap.nanometres()).divide(added, 0, RoundingMode.CEILING).intValueExact();
			return turns == 1 ? Phrase.of("work.film.once", FILM) : Phrase.of("work.film.times", FILM, turns);
		}).orElseGet(() -> Phrase.of("work.film", FILM));
	}
}
