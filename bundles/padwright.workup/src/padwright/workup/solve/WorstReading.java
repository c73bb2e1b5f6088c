package padwright.workup.solve;

import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;
import padwright.model.plan.Round;

/**
 * Where the feeler will find most, of the hours that were read, once the solved pieces are placed.
 *
 * @param hour the first of equals, in the order of the readings
 * @param gap with the key at rest on its highest spot
 */
public record WorstReading(ClockHour hour, Length gap) {

	/** Nothing for a pad that was not solved. */
	public static Optional<WorstReading> of(KeySolution solution) {
		return solution.level().flatMap(answer -> {
			RimProfile resting = RestingGap.of(answer.solution().residual());
			Round round = solution.job().lastRound().orElseThrow();
			return solution.job().hours(round).stream().map(hour -> new WorstReading(hour, resting.at(hour)))
					.reduce((first, next) -> next.gap.isLongerThan(first.gap) ? next : first);
		});
	}
}
