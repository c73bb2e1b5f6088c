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
	private static final double LEAST_GAIN = 0.02;
	/** Hours less likely to be open than this are not worth a feel. */
	private static final double LEAST_OPEN = 0.01;
	private static final int STATIONS = PossibleRims.STATIONS;

	private final PossibleRims rims;
	private final LevelTable table;
	private final double unasked;
	private final int hinge;
	private final double seat;
	private final double[][] gaps;
	private final double[] misfelt;

	WorthOfKnowing(PossibleRims rims, LevelTable table, ClockHour hinge, double seat) {
		this.rims = rims;
		this.table = table;
		this.hinge = hinge.station();
		this.seat = seat;
		double[] nothing = new double[STATIONS];
		gaps = rims.rims().stream().map(rim -> rim.gap(nothing)).toArray(double[][]::new);
		RandomStream hand = new RandomStream(SEED);
		misfelt = rims.rims().stream().mapToDouble(rim -> rim.feel() * hand.normal()).toArray();
		unasked = table.chance(groups(rim -> 0, 1));
	}

	/** The hour whose reading is worth most; empty if none is worth it. */
	Optional<NextHour> nextHour(List<FeltRound> rounds) {
		double[] leaves = leaves(rounds);
		return unread(rounds).map(hour -> next(hour, leaves)).filter(next -> next.gain() >= LEAST_GAIN)
				.reduce((one, other) -> other.gain() > one.gain() ? other : one);
	}

	/** Where every hour read drags, the hour that is likeliest to be open after all; empty if none is likely. */
	Optional<NextHour> hourToMakeSure(List<FeltRound> rounds) {
		double[] leaves = leaves(rounds);
		return unread(rounds).filter(hour -> openAt(hour) >= LEAST_OPEN)
				.reduce((one, other) -> openAt(other) > openAt(one) ? other : one).map(hour -> next(hour, leaves));
	}

	private static Stream<ClockHour> unread(List<FeltRound> rounds) {
		List<ClockHour> read = rounds.get(rounds.size() - 1).readings().stream().map(FeltReading::hour).toList();
		return IntStream.range(0, STATIONS).mapToObj(ClockHour::new).filter(hour -> !read.contains(hour));
	}

	private NextHour next(ClockHour hour, double[] leaves) {
		return new NextHour(hour, Math.max(0, gainOfReading(hour.station(), leaves)), openAt(hour));
	}

	private double openAt(ClockHour hour) {
		int turned = Math.floorMod(hour.station() - hinge, STATIONS);
		return Arrays.stream(gaps).filter(gap -> gap[turned] > seat).count() / (double) gaps.length;
	}

	/** Limits that the hand told apart before. */
	private static double[] leaves(List<FeltRound> rounds) {
		return rounds.stream().map(FeltRound::readings).flatMap(List::stream)
				.flatMap(reading -> Stream.concat(reading.below().stream(),
						Stream.of(reading.above())))
				.filter(limit -> limit.signum() > 0).mapToDouble(Length::nanometres).distinct().sorted().toArray();
	}

	private double gainOfReading(int station, double[] leaves) {
		int turned = Math.floorMod(station - hinge, STATIONS);
		int[] outcome = new int[rims.count()];
		for (int rim = 0; rim < outcome.length; rim++) {
			double felt = gaps[rim][turned] + misfelt[rim];
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
