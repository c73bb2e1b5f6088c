package padwright.workup.checks.plans;

import java.util.List;

import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;

/** After a round that was level nothing is left to feel, but on a later day: pads move over night. */
public final class RoundOrderCheck extends Check<KeyJob> {

	public RoundOrderCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		List<Round> rounds = job.service().getRounds();
		for (int index = 1; index < rounds.size(); index++) {
			if (rounds.get(index - 1).isLevel() && !isLater(rounds.get(index), rounds.get(index - 1))) {
				findings.warning(IssueCodes.ROUND_AFTER_LEVEL,
						Place.of(rounds.get(index), PlanPackage.Literals.ROUND__READINGS),
						Advice.of(IssueCodes.ROUND_AFTER_LEVEL));
			}
		}
	}

	private static boolean isLater(Round round, Round before) {
		return round.getDate() != null && before.getDate() != null && round.getDate().isAfter(before.getDate());
	}
}
