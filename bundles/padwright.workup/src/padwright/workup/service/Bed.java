package padwright.workup.service;

import padwright.engine.length.Length;

/** The sums of full shims that are expected in a cup, from the least to the most. */
public record Bed(Length least, Length most) {

	public boolean holds(Length sum) {
		return !sum.isShorterThan(least) && !sum.isLongerThan(most);
	}
}
