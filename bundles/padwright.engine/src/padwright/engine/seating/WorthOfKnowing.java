package padwright.engine.seating;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.FeltReading;
import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.RandomStream;
import padwright.engine.evidence.RimNow;
import padwright.engine.length.Length;

/**
 * What it would be worth to know more before something is done: the value of information, as the gain in the chance to
 * be level (H. Raiffa and R. Schlaifer, Applied Statistical Decision Theory, 1961; from memory). Worked out over a few
 * hundred rims and single actions, so that it says which question is worth most rather than how much exactly.
 */
final class WorthOfKnowing {

	private static final long SEED = 0xFEE1L;
	private static final int PARTS = 4;
	/** Gains below this are within what the sample scatters. */
	private static final double LEAST_GAIN = 0.03;
	private static final int STATIONS = PossibleRims.STATIONS;

	private final PossibleRims rims;
	private final LevelTable table;
	private final double unasked;
	private final int hinge;

	WorthOfKnowing(PossibleRims rims, LevelTable table, ClockHour hinge) {
		this.rims = rims;
		this.table = table;
		this.hinge = hinge.station();
		unasked = table.chance(groups(rim -> 0, 1));
	}

	/** The hour whose reading is worth most; empty if none is worth it. */
	Optional<NextHour> nextHour(List<FeltRound> rounds) {
		FeltRound last = rounds.get(rounds.size() - 1);
		List<ClockHour> read = last.readings().stream().map(FeltReading::hour).toList();
		double[] leaves = leaves(rounds);
		Optional<NextHour> best = Optional.empty();
		for (int station = 0; station < STATIONS; station++) {
			ClockHour hour = new ClockHour(station);
			double gain = read.contains(hour) ? 0 : gainOfReading(station, leaves);
			if (gain >= LEAST_GAIN && (best.isEmpty() || gain > best.get().gain())) {
				best = Optional.of(new NextHour(hour, gain));
			}
		}
		return best;
	}

	/** Limits that the hand told apart before. */
	private static double[] leaves(List<FeltRound> rounds) {
		return rounds.stream().map(FeltRound::readings).flatMap(List::stream)
				.flatMap(reading -> Stream.concat(reading.below().stream(),
						Stream.of(reading.above())))
				.filter(limit -> limit.signum() > 0).mapToDouble(Length::nanometres).distinct().sorted().toArray();
	}

	private double gainOfReading(int station, double[] leaves) {
		RandomStream hand = new RandomStream(SEED);
		int turned = Math.floorMod(station - hinge, STATIONS);
		int[] outcome = new int[rims.count()];
		double[] nothing = new double[STATIONS];
		for (int rim = 0; rim < outcome.length; rim++) {
			RimNow now = rims.rim(rim);
			double felt = now.gap(nothing)[turned] + now.feel() * hand.normal();
			outcome[rim] = (int) Arrays.stream(leaves).filter(leaf -> leaf <= felt).count();
		}
		return table.chance(groups(rim -> outcome[rim], leaves.length + 1)) - unasked;
	}

	/** What is worth most to know. */
	Limit limit(Optional<NextHour> next, double chance, double enough) {
		if (chance >= enough) {
			return Limit.NONE;
		}
		double all = table.shareOfAny() - unasked;
		double hours = next.map(NextHour::gain).orElse(0.0);
		double stiffness = gainOfParts(rim -> rims.rim(rim).stiffnessNode());
		double arm = gainOfParts(rim -> (int) Math.round(1e6 * rims.rim(rim).weights()[0]));
		if (Math.max(hours, Math.max(stiffness, arm)) < LEAST_GAIN) {
			return all < LEAST_GAIN ? Limit.FILM : Limit.COARSE_READINGS;
		}
		return hours >= Math.max(stiffness, arm) ? Limit.UNREAD_HOURS : stiffness >= arm ? Limit.STIFFNESS : Limit.ARM;
	}

	private double gainOfParts(IntUnaryOperator value) {
		int[] sorted = IntStream.range(0, rims.count()).map(value).sorted().toArray();
		int[] bounds = IntStream.range(1, PARTS).map(part -> sorted[part * sorted.length / PARTS]).toArray();
		return table.chance(groups(rim -> (int) Arrays.stream(bounds)
				.filter(bound -> bound <= value.applyAsInt(rim)).count(), PARTS)) - unasked;
	}

	private List<long[]> groups(IntUnaryOperator group, int count) {
		List<long[]> groups = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			groups.add(new long[(rims.count() + 63) / 64]);
		}
		for (int rim = 0; rim < rims.count(); rim++) {
			groups.get(group.applyAsInt(rim))[rim >> 6] |= 1L << rim;
		}
		return groups;
	}
}
