package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

class RimFitTest {

	private static final int STATIONS = ClockHour.STATIONS;

	@Test
	void agreesWithAllReadingsOrNamesThoseItMisses() {
		SplittableRandom random = new SplittableRandom(10);
		int inconsistent = 0;
		for (int run = 0; run < 5_000; run++) {
			List<RimReading> readings = RandomReadings.next(random);
			RimEstimate estimate = RimFit.fit(readings);

			assertTrue(estimate.profile().stream().allMatch(gap -> gap >= 0), readings::toString);
			List<OutlyingReading> missed = readings.stream()
					.filter(reading -> isOutside(reading, estimate.profile().at(reading.hour())))
					.map(reading -> new OutlyingReading(reading,
							reading.distanceFrom(estimate.profile().at(reading.hour()))))
					.toList();
			assertEquals(missed, estimate.contradictions());
			assertEquals(missed.isEmpty(), estimate.consistent());
			inconsistent += missed.isEmpty() ? 0 : 1;
		}
		assertTrue(inconsistent > 1_000 && inconsistent < 4_000, "both kinds are tried: " + inconsistent);
	}

	private static boolean isOutside(RimReading reading, Length gap) {
		return gap.compareTo(reading.atLeast()) < 0
				|| reading.atMost().isPresent() && gap.compareTo(reading.atMost().get()) > 0;
	}

	@Test
	void turnsWithTheReadings() {
		SplittableRandom random = new SplittableRandom(11);
		for (int run = 0; run < 1_000; run++) {
			List<RimReading> readings = RandomReadings.next(random);
			int by = 1 + random.nextInt(STATIONS - 1);

			RimProfile profile = RimFit.fit(readings).profile();
			RimProfile turned = RimFit.fit(RandomReadings.turned(readings, by)).profile();

			for (int station = 0; station < STATIONS; station++) {
				assertEquals(profile.nanometresAt(station), turned.nanometresAt((station + by) % STATIONS),
						() -> readings + " turned by " + by);
			}
		}
	}

	@Test
	void isMirroredWithTheReadings() {
		SplittableRandom random = new SplittableRandom(12);
		for (int run = 0; run < 1_000; run++) {
			List<RimReading> readings = RandomReadings.next(random);
			List<RimReading> mirrored = readings.stream().map(reading -> new RimReading(
					new ClockHour(Math.floorMod(-reading.hour().station(), STATIONS)), reading.atLeast(),
					reading.atMost())).toList();

			RimProfile profile = RimFit.fit(readings).profile();
			RimProfile mirror = RimFit.fit(mirrored).profile();

			for (int station = 0; station < STATIONS; station++) {
				assertEquals(profile.nanometresAt(station),
						mirror.nanometresAt(Math.floorMod(-station, STATIONS)), readings::toString);
			}
		}
	}

	@Test
	void doesNotDependOnTheOrderOfTheReadings() {
		SplittableRandom random = new SplittableRandom(13);
		for (int run = 0; run < 1_000; run++) {
			List<RimReading> readings = RandomReadings.next(random);
			List<RimReading> shuffled = new ArrayList<>(readings);
			Collections.shuffle(shuffled, new Random(run));

			assertEquals(RimFit.fit(readings).profile(), RimFit.fit(shuffled).profile());
		}
	}

	/** Wider intervals allow all that narrower ones do. */
	@Test
	void isNeverRougherForWiderReadings() {
		SplittableRandom random = new SplittableRandom(14);
		for (int run = 0; run < 2_000; run++) {
			List<RimReading> readings = RandomReadings.next(random);
			RimEstimate estimate = RimFit.fit(readings);
			if (estimate.consistent()) {
				List<RimReading> wider = readings.stream().map(reading -> widened(reading, random)).toList();
				double rougher = roughness(RimFit.fit(wider).profile());

				assertTrue(rougher <= roughness(estimate.profile()) * (1 + 1e-3) + 1e4, () -> readings + " " + wider);
			}
		}
	}

	private static RimReading widened(RimReading reading, SplittableRandom random) {
		Length less = new Length(Math.max(0, reading.atLeast().nanometres() - random.nextInt(30_000)));
		Length more = new Length(random.nextInt(30_000));
		return new RimReading(reading.hour(), less, reading.atMost().map(more::plus));
	}

	private static double roughness(RimProfile profile) {
		return IntStream.rangeClosed(1, 5).mapToObj(n -> Harmonic.of(profile, n))
				.mapToDouble(wave -> StrictMath.pow(wave.order(), 4)
						* (wave.cosine() * wave.cosine() + wave.sine() * wave.sine()))
				.sum();
	}

	@Test
	void recoversAProfileOfLowHarmonicsFromMeasuredGaps() {
		SplittableRandom random = new SplittableRandom(15);
		for (int count : new int[] { 3, 4, 6, 8 }) {
			for (int run = 0; run < 500; run++) {
				double[] gaps = randomGaps(random, (count - 1) / 2);
				List<RimReading> readings = IntStream.range(0, count).map(i -> i * STATIONS / count)
						.mapToObj(station -> RimReading.point(new ClockHour(station),
								new Length(Math.round(gaps[station]))))
						.toList();

				assertRecovered(gaps, RimFit.fit(readings), 2);
			}
		}
	}

	@Test
	void recoversFiveHarmonicsFromTwelveGapsMeasuredToAMicrometre() {
		SplittableRandom random = new SplittableRandom(16);
		for (int run = 0; run < 500; run++) {
			double[] gaps = randomGaps(random, 5);
			List<RimReading> readings = IntStream.range(0, 12).map(i -> 2 * i)
					.mapToObj(station -> new RimReading(new ClockHour(station),
							new Length(Math.round(gaps[station]) - 500),
							Optional.of(new Length(Math.round(gaps[station]) + 500))))
					.toList();

			assertRecovered(gaps, RimFit.fit(readings), 3_000);
		}
	}

	private static double[] randomGaps(SplittableRandom random, int order) {
		double[] gaps = new double[STATIONS];
		double[] waves = IntStream.range(0, 2 * order).mapToDouble(i -> random.nextDouble(-20_000, 20_000)).toArray();
		for (int station = 0; station < STATIONS; station++) {
			double angle = 2 * Math.PI * station / STATIONS;
			gaps[station] = 381_000;
			for (int n = 1; n <= order; n++) {
				gaps[station] += waves[2 * n - 2] * Math.cos(n * angle) + waves[2 * n - 1] * Math.sin(n * angle);
			}
		}
		return gaps;
	}

	private static void assertRecovered(double[] gaps, RimEstimate estimate, double within) {
		assertTrue(estimate.consistent());
		for (int station = 0; station < STATIONS; station++) {
			assertEquals(gaps[station], estimate.profile().nanometresAt(station), within);
		}
	}

	@Test
	void isEvenAndAsTightAsCanBeWhereReadingsAllow() {
		FeelerSet feelers = new FeelerSet(List.of(Length.thou("0.5"), Length.thou("1"), Length.thou("2")));
		RimEstimate dragging = RimFit.fit(hours(12, 3, 6, 9).map(feelers::drags).toList());
		RimEstimate free = RimFit.fit(Stream.concat(
				hours(12, 6).map(hour -> feelers.free(hour, Length.thou("1"))),
				hours(3, 9).map(hour -> feelers.free(hour, Length.thou("0.5")))).toList());

		assertEquals(even(Length.ZERO), dragging.profile());
		assertEquals(even(Length.thou("1")), free.profile());
	}

	@Test
	void missesTheOneReadingThatDoesNotGoWithTheOthers() {
		List<RimReading> readings = new ArrayList<>(IntStream.range(0, 12)
				.mapToObj(i -> RimReading.point(new ClockHour(2 * i), Length.thou("15"))).toList());
		RimReading odd = RimReading.point(new ClockHour(10), Length.thou("18"));
		readings.set(5, odd);

		RimEstimate estimate = RimFit.fit(readings);

		assertEquals(List.of(new OutlyingReading(odd, Length.thou("3"))), estimate.contradictions());
		assertEquals(even(Length.thou("15")), estimate.profile());
	}

	@Test
	void takesTheSmallerOfTwoMeasuresAtOneHour() {
		RimReading narrow = RimReading.point(new ClockHour(4), Length.thou("2"));
		RimReading wide = RimReading.point(new ClockHour(4), Length.thou("3"));

		RimEstimate estimate = RimFit.fit(List.of(wide, narrow));

		assertEquals(even(Length.thou("2")), estimate.profile());
		assertEquals(List.of(new OutlyingReading(wide, Length.thou("1"))), estimate.contradictions());
		assertFalse(estimate.consistent());
	}

	@Test
	void holdsBothIntervalsAtOneHour() {
		ClockHour hour = new ClockHour(7);
		RimReading free = new RimReading(hour, Length.thou("1"), Optional.empty());
		RimReading between = new RimReading(hour, Length.ZERO, Optional.of(Length.thou("1.5")));

		assertEquals(even(Length.thou("1")), RimFit.fit(List.of(between, free)).profile());
	}

	@Test
	void drawsAPlaneThroughThreeReadings() {
		List<RimReading> readings = Stream.of(0, 8, 16)
				.map(station -> RimReading.point(new ClockHour(station), Length.thou(station == 0 ? "16" : "14.5")))
				.toList();

		RimProfile profile = RimFit.fit(readings).profile();

		assertEquals(Length.thou("15"), profile.mean());
		assertEquals(Length.thou("14"), profile.at(ClockHour.ofHour(6)));
	}

	@Test
	void countsDifferentHoursForTheOrder() {
		int[] expected = { 1, 1, 1, 2, 2, 3, 3, 4, 4, 4, 4, 5, 5 };
		for (int count = 1; count <= expected.length; count++) {
			List<RimReading> readings = IntStream.range(0, count).mapToObj(ClockHour::new)
					.map(hour -> RimReading.point(hour, Length.ZERO)).toList();

			assertEquals(expected[count - 1], RimFit.order(readings));
			assertEquals(expected[count - 1],
					RimFit.order(Stream.concat(readings.stream(), readings.stream()).toList()));
		}
	}

	@Test
	void refusesNoReading() {
		assertThrows(IllegalArgumentException.class, () -> RimFit.fit(List.of()));
	}

	private static Stream<ClockHour> hours(int... hours) {
		return IntStream.of(hours).mapToObj(ClockHour::ofHour);
	}

	private static RimProfile even(Length gap) {
		return RimProfile.ofNanometres(IntStream.range(0, STATIONS).mapToLong(i -> gap.nanometres()).toArray());
	}
}
