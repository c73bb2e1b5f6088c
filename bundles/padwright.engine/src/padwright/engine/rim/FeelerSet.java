package padwright.engine.rim;

import java.util.List;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * The feeler leaves at hand, which turn drag and slide into intervals.
 *
 * @param leaves their thicknesses, more than zero, no two alike; kept finest first
 */
public record FeelerSet(List<Length> leaves) {

	/** @throws IllegalArgumentException if there are none, two are alike, or one is not thicker than nothing */
	public FeelerSet {
		List<Length> sorted = leaves.stream().sorted().distinct().toList();
		if (sorted.isEmpty()) {
			throw new IllegalArgumentException("a set of feelers needs a leaf");
		}
		if (sorted.size() < leaves.size()) {
			throw new IllegalArgumentException("two feelers of one thickness in " + leaves);
		}
		if (sorted.get(0).signum() <= 0) {
			throw new IllegalArgumentException("a feeler of " + sorted.get(0) + " is not thicker than nothing");
		}
		leaves = sorted;
	}

	/** The finest leaf drags: the gap is anything up to it. */
	public RimReading drags(ClockHour hour) {
		return new RimReading(hour, Length.ZERO, Optional.of(leaves.get(0)));
	}

	/**
	 * The leaf slides free and the next thicker one does not: the gap lies between them; no upper bound if there is no
	 * thicker one.
	 *
	 * @throws IllegalArgumentException if the leaf is not of this set
	 */
	public RimReading free(ClockHour hour, Length leaf) {
		return new RimReading(hour, leaf, nextThicker(leaf));
	}

	public Length finest() {
		return leaves.get(0);
	}

	/** Half the thickness of the finest leaf, rounded down to the nanometre. */
	public Length halfTheFinest() {
		return new Length(finest().nanometres() / 2);
	}

	/**
	 * The leaf after one of this set; empty after the thickest.
	 *
	 * @throws IllegalArgumentException if the leaf is not of this set
	 */
	public Optional<Length> nextThicker(Length leaf) {
		int index = leaves.indexOf(leaf);
		if (index < 0) {
			throw new IllegalArgumentException("no feeler of " + leaf + " among " + leaves);
		}
		return leaves.stream().skip(index + 1L).findFirst();
	}
}
