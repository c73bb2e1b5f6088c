package padwright.engine.bench;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.FeltReading;
import padwright.engine.length.Length;
import padwright.engine.rim.FeelerSet;

/** A hand that feels a pad with leaves, finest first, ten minutes of the clock early or late. */
final class Hand {

	static final FeelerSet LEAVES = new FeelerSet(
			Stream.of("0.5", "1", "1.5", "2", "3", "4").map(Length::thou).toList());
	private static final double FEEL = 0.1 * 25_400;
	private static final double MISPLACED_HOURS = 1 / 6.0;

	private final SimulatedPad pad;
	private final boolean graded;
	private final Random random;
	private final double feel;

	Hand(SimulatedPad pad, boolean graded) {
		this.pad = pad;
		this.graded = graded;
		random = pad.random();
		feel = FEEL * Math.exp(0.2 * random.nextGaussian());
	}

	List<FeltReading> feel(List<ClockHour> hours) {
		return hours.stream().map(this::feel).toList();
	}

	private FeltReading feel(ClockHour hour) {
		double gap = pad.gapAt(hour.station() / 2.0 + MISPLACED_HOURS * random.nextGaussian());
		Length slid = null;
		for (Length leaf : LEAVES.leaves()) {
			if (drags(leaf.nanometres(), gap)) {
				return slid == null ? drag(hour, gap) : FeltReading.slide(hour, slid, LEAVES);
			}
			slid = leaf;
		}
		return FeltReading.slide(hour, slid, LEAVES);
	}

	private FeltReading drag(ClockHour hour, double gap) {
		if (!graded) {
			return FeltReading.drag(hour, LEAVES);
		}
		return drags(LEAVES.halfTheFinest().nanometres(), gap) ? FeltReading.firmDrag(hour, LEAVES)
				: FeltReading.lightDrag(hour, LEAVES);
	}

	private boolean drags(double limit, double gap) {
		return gap + feel * random.nextGaussian() < limit;
	}
}
