package padwright.workup.harm;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import padwright.engine.acoustics.Cover;
import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

/**
 * How large leaks are beside each other. The flow through a fine slit goes by the cube of its height, so sizes are told in that of
 * a pad with a gap of 1 thou all around.
 */
final class LeakSize {

	private static final double THOU = Length.thou("1").nanometres();
	private static final double METRES = 1e-9;

	/** The pad whose leak has the size 1. */
	static final Cover.Leaking ONE = new Cover.Leaking(Collections.nCopies(ClockHour.STATIONS, THOU * METRES));

	private LeakSize() {
	}

	/** 0 for a pad that is tight all around. */
	static double of(RimProfile gap) {
		return IntStream.range(0, ClockHour.STATIONS)
				.mapToDouble(station -> gap.at(new ClockHour(station)).nanometres() / THOU)
				.map(height -> height > 0 ? height * height * height : 0).sum() / ClockHour.STATIONS;
	}

	/** So many gaps from the least leak to the greatest, each standing for as many of those that are possible. */
	static List<RimProfile> spread(List<RimProfile> gaps, int count) {
		List<RimProfile> bySize = gaps.stream().sorted(Comparator.comparingDouble(LeakSize::of)).toList();
		return IntStream.range(0, count)
				.mapToObj(index -> bySize.get((int) ((index + 0.5) * bySize.size() / count))).toList();
	}
}
