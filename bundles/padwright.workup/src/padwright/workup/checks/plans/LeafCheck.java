package padwright.workup.checks.plans;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Listed;

/** A reading names a feeler that the stock has. */
public final class LeafCheck extends Check<KeyJob> {

	public LeafCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		List<Length> leaves = job.plan().feelers();
		if (leaves.isEmpty()) {
			return;
		}
		for (Round round : job.allRounds()) {
			LengthUnit unit = Lengths.unit(round.getUnit(), round);
			for (int index = 0; index < round.getReadings().size(); index++) {
				check(round, index, unit, leaves, findings);
			}
		}
	}

	private static void check(Round round, int index, LengthUnit unit, List<Length> leaves, Findings findings) {
		Optional<BigDecimal> free = round.getReadings().get(index).free();
		free.flatMap(number -> Lengths.exact(number, unit)).filter(leaf -> !leaves.contains(leaf))
				.ifPresent(leaf -> findings.error(IssueCodes.READING_UNKNOWN_LEAF,
						new Place(round, PlanPackage.Literals.ROUND__READINGS, index),
						Advice.of(IssueCodes.READING_UNKNOWN_LEAF, leaf, Listed.of(leaves))));
	}
}
