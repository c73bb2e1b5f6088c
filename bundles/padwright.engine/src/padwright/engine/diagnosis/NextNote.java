package padwright.engine.diagnosis;

import java.util.List;
import java.util.Optional;

/**
 * The note to try next.
 *
 * @param note the note
 * @param chanceBad how likely it is to be bad, by the suspects' shares
 * @param bits information expected from trying it, 0 to 1 bit
 */
public record NextNote(NoteFingering note, double chanceBad, double bits) {

	/** Chances are compared to the billionth, so that sums taken in another order are ties. */
	private static final long STEPS = 1_000_000_000;

	/** The note that splits the suspects most evenly, the first of equals; none if no note splits them. */
	static Optional<NextNote> among(List<NoteFingering> candidates, List<SuspectSet> suspects) {
		NextNote best = null;
		for (NoteFingering candidate : candidates) {
			NextNote next = of(candidate, suspects);
			if (next.unevenness() < STEPS && (best == null || next.unevenness() < best.unevenness())) {
				best = next;
			}
		}
		return Optional.ofNullable(best);
	}

	private static NextNote of(NoteFingering note, List<SuspectSet> suspects) {
		double chance = suspects.stream().filter(set -> set.spoils(note)).mapToDouble(SuspectSet::share)
				.reduce(0, Double::sum);
		double bad = Math.min(1, chance);
		return new NextNote(note, bad, surprise(bad) + surprise(1 - bad));
	}

	/** 0 where good and bad are equally likely, {@link #STEPS} where the outcome is known. */
	private long unevenness() {
		return Math.abs(2 * Math.round(chanceBad * STEPS) - STEPS);
	}

	private static double surprise(double chance) {
		return chance > 0 ? -chance * StrictMath.log(chance) / StrictMath.log(2) : 0;
	}
}
