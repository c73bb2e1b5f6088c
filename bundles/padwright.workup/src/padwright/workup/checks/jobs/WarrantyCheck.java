package padwright.workup.checks.jobs;

import org.eclipse.emf.ecore.EObject;

import padwright.model.plan.PlanPackage;
import padwright.model.plan.WarrantyVisit;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.job.EarlierService;

/** A warranty visit makes good an earlier service, not this one. */
public final class WarrantyCheck extends Check<WarrantyVisit> {

	public WarrantyCheck() {
		super(WarrantyVisit.class);
	}

	@Override
	protected void check(WarrantyVisit visit, Findings findings) {
		EObject own = visit.eContainer() == null ? null : visit.eContainer().eContainer();
		EarlierService.of(visit).filter(earlier -> earlier == own).ifPresent(itself -> findings.warning(
				IssueCodes.WARRANTY_SERVICE, Place.of(visit, PlanPackage.Literals.WARRANTY_VISIT__SERVICE),
				Advice.of(IssueCodes.WARRANTY_SERVICE, itself.getName())));
	}
}
