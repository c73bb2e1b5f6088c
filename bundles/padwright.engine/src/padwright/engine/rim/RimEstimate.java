package padwright.engine.rim;

import java.util.List;

/**
 * The profile estimated from readings.
 *
 * @param profile never negative
 * @param contradictions readings it lies outside of, in the order given; empty if it agrees with all
 */
public record RimEstimate(RimProfile profile, List<OutlyingReading> contradictions) {

	public RimEstimate {
		contradictions = List.copyOf(contradictions);
	}

	/** Whether the profile agrees with every reading. */
	public boolean consistent() {
		return contradictions.isEmpty();
	}
}
