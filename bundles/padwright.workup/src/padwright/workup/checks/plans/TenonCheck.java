package padwright.workup.checks.plans;

import java.util.HashSet;
import java.util.Set;

import padwright.model.Resolved;
import padwright.model.keysystem.Joint;
import padwright.model.plan.Inspection;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Tenon;
import padwright.model.plan.TenonFit;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** Each tenon is judged once, and only a loose one is loose by something. */
public final class TenonCheck extends Check<Inspection> {

	public TenonCheck() {
		super(Inspection.class);
	}

	@Override
	protected void check(Inspection inspection, Findings findings) {
		Set<Joint> seen = new HashSet<>();
		for (Tenon tenon : inspection.getTenons()) {
			if (Resolved.of(tenon.getJoint()).filter(joint -> !seen.add(joint)).isPresent()) {
				findings.error(IssueCodes.TENON_TWICE, Place.of(tenon, PlanPackage.Literals.TENON__JOINT),
						Advice.of(IssueCodes.TENON_TWICE, tenon.getJoint().getName()));
			}
			if (tenon.getGap() != null && tenon.getFit() != TenonFit.LOOSE) {
				findings.error(IssueCodes.TENON_GAP, Place.of(tenon, PlanPackage.Literals.TENON__GAP),
						Advice.of(IssueCodes.TENON_GAP, tenon.getFit().getLiteral()));
			}
		}
	}
}
