package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

class ProfileSplitTest {

	private static final Length UNIT = Length.millimetres("1");

	/**
	 * Least-squares plane and minimum zone in the terms of ISO 12781-1, of z = cos 2θ (derived here): no tilt, and a
	 * zone of 2.
	 */
	@Test
	void findsNoTiltInASaddle() {
		RimProfile saddle = profile(angle -> Math.cos(2 * angle));
		ProfileSplit split = ProfileSplit.of(saddle);

		assertEquals(Length.ZERO, split.tilt().amplitude());
		assertEquals(UNIT, split.saddle().amplitude());
		assertEquals(hours(12, 6), split.saddle().openHours());
		assertEquals(hours(3, 9), split.saddle().tightHours());
		assertEquals(UNIT.times(2), MinimumZone.of(saddle));
		assertEquals(Length.ZERO, split.floatable());
		assertTrue(split.rest().nanometres() <= 1);
	}

	/** Likewise z = 2 + 0.3 cos θ + cos 2θ: plane (2, 0.3, 0), zone 2. */
	@Test
	void findsThePlaneUnderASaddle() {
		RimProfile profile = profile(angle -> 2 + 0.3 * Math.cos(angle) + Math.cos(2 * angle));
		ProfileSplit split = ProfileSplit.of(profile);

		assertEquals(2_000_000, split.height().nanometres(), 1);
		assertEquals(300_000, split.tilt().cosine(), 1);
		assertEquals(0, split.tilt().sine(), 1);
		assertEquals(hours(12), split.tilt().openHours());
		assertEquals(hours(6), split.tilt().tightHours());
		assertEquals(2_000_000, split.filmOnly().nanometres(), 2);
		assertEquals(profile.spread(), split.filmOnly().plus(split.floatable()));
	}

	/** From N even stations harmonics above N/2 alias (undulations per revolution, ISO 12181; derived here). */
	@Test
	void takesAnUndulationAboveTwelveForOneBelow() {
		Harmonic alias = Harmonic.of(profile(angle -> Math.cos(22 * angle)), 2);
		Harmonic mirrored = Harmonic.of(profile(angle -> Math.sin(23 * angle)), 1);

		assertEquals(1e6, alias.cosine(), 1);
		assertEquals(-1e6, mirrored.sine(), 1);
	}

	@Test
	void findsEachHarmonicWhereItWasPut() {
		SplittableRandom random = new SplittableRandom(30);
		for (int run = 0; run < 1_000; run++) {
			int order = 1 + random.nextInt(5);
			int open = random.nextInt(ClockHour.STATIONS);
			double amplitude = random.nextDouble(0.01, 2);
			RimProfile profile = profile(
					angle -> 3 + amplitude * Math.cos(order * (angle - new ClockHour(open).angle())));

			for (int other = 1; other < 12; other++) {
				Harmonic wave = Harmonic.of(profile, other);
				assertEquals(other == order ? amplitude * 1e6 : 0, wave.amplitude().nanometres(), 2);
			}
			Harmonic wave = Harmonic.of(profile, order);
			assertTrue(wave.openHours().contains(new ClockHour(open)), () -> order + " " + open);
			assertEquals(order, wave.openHours().size());
			assertEquals(2 * amplitude * 1e6, wave.fromTightToOpen().nanometres(), 2);
		}
	}

	@Test
	void putsATiltWhollyInWhatFloatingCures() {
		ProfileSplit split = ProfileSplit.of(profile(angle -> 1 + 0.4 * Math.sin(angle)));

		assertEquals(hours(3), split.tilt().openHours());
		assertEquals(800_000, split.floatable().nanometres(), 2);
		assertEquals(0, split.filmOnly().nanometres(), 2);
	}

	@Test
	void isOfNoSpreadWhenEven() {
		ProfileSplit split = ProfileSplit.of(profile(angle -> 1));

		assertEquals(UNIT, split.height());
		assertEquals(Length.ZERO, split.spread());
		assertEquals(Length.ZERO, split.filmOnly());
		assertEquals(Length.ZERO, split.rest());
	}

	/** The zone of least width touches three points of one side and one of the other, or two and two. */
	@Test
	void hasTheNarrowestZoneOfAllPlanesThroughPairsOfPairs() {
		SplittableRandom random = new SplittableRandom(31);
		for (int run = 0; run < 25; run++) {
			long[] gaps = LongStream.range(0, ClockHour.STATIONS).map(i -> random.nextLong(100_000)).toArray();

			assertEquals(narrowest(gaps), MinimumZone.of(RimProfile.ofNanometres(gaps)).nanometres(), 0.6);
		}
	}

	private static double narrowest(long[] gaps) {
		List<double[]> edges = IntStream.range(0, gaps.length).boxed().flatMap(a -> IntStream.range(0, a)
				.mapToObj(b -> new double[] { x(a) - x(b), y(a) - y(b), gaps[a] - gaps[b] })).toList();
		double narrowest = Double.POSITIVE_INFINITY;
		for (double[] first : edges) {
			for (double[] second : edges) {
				double area = first[0] * second[1] - first[1] * second[0];
				if (area > 1e-9) {
					narrowest = Math.min(narrowest, spread(gaps, (first[2] * second[1] - first[1] * second[2]) / area,
							(first[0] * second[2] - first[2] * second[0]) / area));
				}
			}
		}
		return narrowest;
	}

	private static double spread(long[] gaps, double alongX, double alongY) {
		double most = Double.NEGATIVE_INFINITY;
		double least = Double.POSITIVE_INFINITY;
		for (int i = 0; i < gaps.length; i++) {
			double rest = gaps[i] - alongX * x(i) - alongY * y(i);
			most = Math.max(most, rest);
			least = Math.min(least, rest);
		}
		return most - least;
	}

	private static double x(int station) {
		return Math.cos(new ClockHour(station).angle());
	}

	private static double y(int station) {
		return Math.sin(new ClockHour(station).angle());
	}

	@Test
	void refusesAHarmonicThatStationsCannotTell() {
		assertThrows(IllegalArgumentException.class, () -> new Harmonic(0, 1, 1));
		assertThrows(IllegalArgumentException.class, () -> new Harmonic(12, 1, 1));
	}

	private static RimProfile profile(DoubleUnaryOperator millimetres) {
		return RimProfile.ofNanometres(IntStream.range(0, ClockHour.STATIONS).mapToObj(ClockHour::new)
				.mapToLong(hour -> Math.round(1e6 * millimetres.applyAsDouble(hour.angle()))).toArray());
	}

	private static List<ClockHour> hours(int... hours) {
		return IntStream.of(hours).mapToObj(ClockHour::ofHour).toList();
	}
}
