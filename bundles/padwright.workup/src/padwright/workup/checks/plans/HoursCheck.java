package padwright.workup.checks.plans;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import padwright.engine.clock.ClockHour;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** Hours of readings run once around the clock. */
public final class HoursCheck extends Check<ServicePlan> {

	public HoursCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan service, Findings findings) {
		check(service.plan(), PlanPackage.Literals.PLAN__HOURS, service.plan().getHours(), findings);
		for (KeyJob job : service.jobs()) {
			check(job.service(), PlanPackage.Literals.KEY_SERVICE__NICKS, job.service().getNicks(), findings);
			for (Round round : job.allRounds()) {
				check(round, PlanPackage.Literals.ROUND__HOURS, round.getHours(), findings);
			}
		}
	}

	private static void check(EObject element, EStructuralFeature feature, List<ClockHour> hours, Findings findings) {
		Set<ClockHour> seen = new HashSet<>();
		int turned = 0;
		for (int index = 0; index < hours.size(); index++) {
			ClockHour hour = hours.get(index);
			if (!seen.add(hour)) {
				findings.error(IssueCodes.HOUR_TWICE, new Place(element, feature, index),
						Advice.of(IssueCodes.HOUR_TWICE, hour));
			}
			turned += index == 0 ? 0 : hours.get(index - 1).halfHoursTo(hour);
		}
		if (turned >= ClockHour.STATIONS) {
			findings.warning(IssueCodes.HOURS_OUT_OF_ORDER, Place.of(element, feature),
					Advice.of(IssueCodes.HOURS_OUT_OF_ORDER));
		}
	}
}
