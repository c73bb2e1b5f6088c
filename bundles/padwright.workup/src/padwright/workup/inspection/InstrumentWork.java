package padwright.workup.inspection;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.plan.CorkState;
import padwright.model.plan.Inspection;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Tenon;
import padwright.model.plan.TenonFit;
import padwright.workup.service.ServicePlan;

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
			seen.getTenons().forEach(tenon -> tenon(tenon).ifPresent(work::add));
			if (seen.isSetHeadCork() && seen.getHeadCork() != CorkState.SOUND) {
				work.add(headCork(seen));
			}
			Lengths.of(seen.getPlay(), seen).ifPresent(play -> work.add(new Recommendation(seen,
					PlanPackage.Literals.INSPECTION__PLAY, "mechanism", "end play of " + play, MechanismWords.TAKE_UP,
					MechanismWords.WHY_TAKE_UP)));
		}
		return work;
	}

	private static Recommendation headCork(Inspection seen) {
		return new Recommendation(seen, PlanPackage.Literals.INSPECTION__HEAD_CORK, "head cork",
				seen.getHeadCork().getLiteral(), "Fit a new head cork and set its place",
				"it takes up water and dries out, and then lets air past; no pad can make up for that");
	}

	private static Optional<Recommendation> tenon(Tenon tenon) {
		if (tenon.getFit() == TenonFit.SOUND || tenon.getJoint() == null) {
			return Optional.empty();
		}
		String where = tenon.getJoint().getLiteral() + " tenon";
		return Optional.of(tenon.getFit() == TenonFit.LOOSE
				? new Recommendation(tenon, PlanPackage.Literals.TENON__FIT, where, "loose" + by(tenon),
						"Lay half-thou film around it" + turns(tenon),
						"film can be taken off again, and no metal is stretched or worn")
				: new Recommendation(tenon, PlanPackage.Literals.TENON__FIT, where, "tight",
						"Clean both parts, look for a dent, and make them round",
						"it is dirt or out of round; sanding would make it loose for good"));
	}

	private static String by(Tenon tenon) {
		return Lengths.of(tenon.getGap(), tenon).map(gap -> " by " + gap).orElse("");
	}

	private static String turns(Tenon tenon) {
		return Lengths.of(tenon.getGap(), tenon).map(gap -> {
			BigDecimal added = BigDecimal.valueOf(2 * FILM.nanometres());
			int turns = BigDecimal.valueOf(gap.nanometres()).divide(added, 0, RoundingMode.CEILING).intValueExact();
			return turns == 1 ? ", once" : ", " + turns + " times";
		}).orElse(" until it holds");
	}
}
