package padwright.engine.diagnosis;

import java.util.List;
import java.util.Optional;

/**
 * The note to try next.
 *
 * @param note the note
 * @param chanceBad how likely it is to be bad, by the suspects' shares
 * @param bits information about the suspects that is expected from trying it, 0 to 1 bit
 */
public record NextNote(NoteFingering note, double chanceBad, double bits) {

	/** Bits are compared to this part, so that sums taken in another order are ties. */
	private static final double STEPS = 1e12;

	/** How likely a note is bad if just the pads of a set leak. */
	@FunctionalInterface
	interface ChanceBad {
		double of(SuspectSet set, NoteFingering note);
	}

	/** The note that tells most, the first of equals; none if no note tells anything. */
	static Optional<NextNote> among(List<NoteFingering> candidates, List<SuspectSet> suspects, ChanceBad chance) {
		NextNote best = null;
		for (NoteFingering candidate : candidates) {
			NextNote next = of(candidate, suspects, chance);
			if (next.steps() > (best == null ? 0 : best.steps())) {
				best = next;
			}
		}
		return Optional.ofNullable(best);
	}

	private static NextNote of(NoteFingering note, List<SuspectSet> suspects, ChanceBad chance) {
		double bad = 0;
		double noise = 0;
		for (SuspectSet set : suspects) {
			double ofSet = chance.of(set, note);
			bad += set.share() * ofSet;
			noise += set.share() * uncertainty(ofSet);
		}
		bad = Math.min(1, bad);
		return new NextNote(note, bad, Math.max(0, uncertainty(bad) - noise));
	}

	private long steps() {
		return Math.round(bits * STEPS);
	}

	private static double uncertainty(double chance) {
		return surprise(chance) + surprise(1 - chance);
	}

	private static double surprise(double chance) {
		return chance > 0 ? -chance * StrictMath.log(chance) / StrictMath.log(2) : 0;
	}
}
