package padwright.workup.checks.plans;

import java.util.HashMap;
import java.util.Map;

import padwright.model.plan.PlanPackage;
import padwright.model.stock.Pad;
import padwright.model.stock.StockedSize;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** There are enough pads of each diameter. */
public final class PadCountCheck extends Check<ServicePlan> {

	public PadCountCheck() {
		super(ServicePlan.class);
	}

	@Override
	protected void check(ServicePlan service, Findings findings) {
		Map<StockedSize, Integer> used = new HashMap<>();
		for (KeyJob job : service.jobs()) {
			job.padSize().ifPresent(size -> {
				int count = used.merge(size, 1, Integer::sum);
				if (size.isSetQuantity() && count == size.getQuantity() + 1) {
					findings.warning(IssueCodes.PAD_SHORT,
							Place.of(job.service(), PlanPackage.Literals.KEY_SERVICE__KEY), advice(job, size));
				}
			});
		}
	}

	private static Advice advice(KeyJob job, StockedSize size) {
		String pad = job.fitting().pad().map(Pad::getName).orElseThrow();
		return Advice.of(IssueCodes.PAD_SHORT, job.name(), pad, size.getSize().toPlainString(), size.getQuantity());
	}
}
