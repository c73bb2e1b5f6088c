package padwright.workup.learn;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.RimCondition;
import padwright.engine.learning.LifeBracket;
import padwright.model.plan.Saliva;
import padwright.workup.calibration.PadCalibration;
import padwright.workup.forecast.PastService;
import padwright.workup.service.ServicePlan;

/**
 * What one plan teaches, without anything of its document, so that of many plans only this has to be kept.
 *
 * @param visit what became of pads; nothing for a plan without a date or a player
 * @param felt hours that were felt twice
 * @param gaps gaps as first felt
 * @param rounds rounds with pieces between them
 */
public record PlanFacts(Optional<Visit> visit, Optional<FeltTwice.Pairs> felt, Map<RimCondition, List<LifeBracket>> gaps,
		List<PadCalibration.Evidence> rounds) {

	/**
	 * An instrument at one service.
	 *
	 * @param saliva as the plan says it
	 * @param torn pads found torn
	 */
	record Visit(LocalDate date, String player, String instrument, Optional<Saliva> saliva, int torn, List<PadSeen> pads) {

		Visit {
			pads = List.copyOf(pads);
		}
	}

	/**
	 * A pad at one service.
	 *
	 * @param isNew whether a new one is fitted
	 * @param isTorn whether the old one was found torn
	 * @param foundLevel whether every hour dragged as it was first felt; nothing where it was not felt
	 * @param leftLevel whether every hour dragged as it was last felt
	 * @param found gaps as it was first felt
	 * @param left gaps as it was last felt
	 */
	record PadSeen(String key, String article, boolean isNew, boolean isTorn, Optional<Boolean> foundLevel,
			boolean leftLevel, List<FeltGap> found, List<FeltGap> left) {
	}

	/** The middle between the leaf that slides at an hour and the next, thou. */
	record FeltGap(ClockHour hour, double gap) {
	}

	public PlanFacts {
		gaps = Map.copyOf(gaps);
		rounds = List.copyOf(rounds);
	}

	public static PlanFacts of(ServicePlan plan) {
		Optional<Visit> visit = PastService.obstacle(plan).isPresent() ? Optional.empty()
				: Optional.of(PadLives.visit(PastService.of(plan)));
		return new PlanFacts(visit, FeltTwice.in(plan), FirstGaps.in(plan), PadCalibration.evidence(plan));
	}
}
