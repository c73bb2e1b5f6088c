package padwright.workup.history;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

import padwright.engine.length.Length;

/**
 * A change that is likely enough to be told.
 *
 * @param by the median of what it may be; above zero for more
 * @param chance that it is at least the least that matters, in that direction, 0 to 1
 */
record LikelyChange(Length by, double chance) {

	/** Less likely changes are not told. */
	static final double ENOUGH = 0.9;

	/**
	 * What a sample of possible changes tells; nothing where it is not likely that there is a change that matters.
	 *
	 * @param count of the sample
	 * @param change one of them, in nm
	 * @param least the least that matters, in nm, zero or more
	 */
	static Optional<LikelyChange> of(int count, IntToDoubleFunction change, double least) {
		double[] changes = new double[count];
		Arrays.setAll(changes, change);
		double more = Arrays.stream(changes).filter(each -> each > least).count() / (double) count;
		double less = Arrays.stream(changes).filter(each -> each < -least).count() / (double) count;
		double chance = Math.max(more, less);
		if (chance < ENOUGH) {
			return Optional.empty();
		}
		Arrays.sort(changes);
		return Optional.of(new LikelyChange(new Length(Math.round(changes[count / 2])), chance));
	}
}
