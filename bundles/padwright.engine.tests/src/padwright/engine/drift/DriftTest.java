package padwright.engine.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.closing.ClosedGap;
import padwright.engine.closing.Hinge;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

class DriftTest {

	private static final Climate BENCH = Climate.of("20", "45");

	private static final Hinge HINGE = new Hinge(ClockHour.ofHour(12), 0.6);

	/** The face that grew evenly by a hundredth of a thou, closed by the engine's own geometry. */
	@Test
	void aPadThatGrowsOpensOppositeTheHingeAndOneThatShrinksAtIt() {
		assertOpened(254, 254, widest(-254), widest(-254));
		assertOpened(-254, -254, widest(254), widest(254));
		assertOpened(-254, 508, 0, Math.max(widest(254), widest(-508)));
		assertOpened(254, 508, widest(-254), widest(-508));
	}

	private static void assertOpened(long low, long high, long least, long most) {
		HeightChange gap = change(low, high).opened(HINGE);
		assertEquals(least, gap.low().nanometres(), 1);
		assertEquals(most, gap.high().nanometres(), 1);
	}

	private static long widest(long clearance) {
		long[] even = new long[ClockHour.STATIONS];
		Arrays.fill(even, clearance);
		return ClosedGap.of(RimProfile.ofNanometres(even), HINGE).stream().max().orElseThrow();
	}

	@Test
	void aWorkedExampleByHand() {
		Layer disc = layer("disc", "20", "104", "106.5", "0", "0.01");
		Drift drift = Drift.of(List.of(disc), BENCH, Climate.of("28", "70"));
		assertEquals(new HeightChange(new Length(422), new Length(1703)), drift.total());
		assertEquals(DriftVerdict.SURELY_WITHIN, drift.against(Length.thou("0.5"), HINGE));
	}

	@Test
	void theSameClimateChangesNothing() {
		Layer felt = layer("felt", "90", "-50", "300", "0.01", "0.2");
		assertEquals(new HeightChange(Length.ZERO, Length.ZERO), Drift.of(List.of(felt), BENCH, BENCH).total());
	}

	/** Any point inside the ranges, computed for itself, lies inside the interval; the corners touch it. */
	@RepeatedTest(200)
	void theIntervalHoldsEveryPointOfTheRanges(RepetitionInfo repetition) {
		SplittableRandom random = new SplittableRandom(7_000 + repetition.getCurrentRepetition());
		List<Layer> stack = randomStack(random);
		Climate home = new Climate(BigDecimal.valueOf(random.nextLong(-500, 800), 1),
				BigDecimal.valueOf(random.nextLong(0, 1000), 1));
		Drift drift = Drift.of(stack, BENCH, home);
		double low = Double.POSITIVE_INFINITY;
		double high = Double.NEGATIVE_INFINITY;
		for (int corner = 0; corner < 1 << 2 * stack.size(); corner++) {
			double change = changeAtCorner(stack, corner, home);
			low = Math.min(low, change);
			high = Math.max(high, change);
		}
		assertEquals(low, drift.total().low().nanometres(), 1.000001);
		assertEquals(high, drift.total().high().nanometres(), 1.000001);
		assertTrue(drift.total().low().nanometres() <= low + 1e-6);
		assertTrue(drift.total().high().nanometres() >= high - 1e-6);
		assertTrue(drift.layers().stream().allMatch(layer -> magnitude(layer) <= magnitude(drift.largest())));
	}

	@RepeatedTest(50)
	void theWayBackIsTheOppositeAndTheOrderOfLayersDoesNotMatter(RepetitionInfo repetition) {
		SplittableRandom random = new SplittableRandom(8_000 + repetition.getCurrentRepetition());
		List<Layer> stack = randomStack(random);
		Climate home = Climate.of("31", "72");
		HeightChange there = Drift.of(stack, BENCH, home).total();
		HeightChange back = Drift.of(stack, home, BENCH).total();
		assertEquals(new HeightChange(there.high().negated(), there.low().negated()), back);
		Collections.reverse(stack);
		assertEquals(there, Drift.of(stack, BENCH, home).total());
	}

	@Test
	void verdictsAtTheirEdges() {
		Length half = new Length(12_700);
		assertEquals(DriftVerdict.SURELY_WITHIN, change(-12_700, 12_700).against(half));
		assertEquals(DriftVerdict.MAY_EXCEED, change(-12_701, 0).against(half));
		assertEquals(DriftVerdict.MAY_EXCEED, change(12_700, 12_701).against(half));
		assertEquals(DriftVerdict.MAY_EXCEED, change(-20_000, 20_000).against(half));
		assertEquals(DriftVerdict.SURELY_EXCEEDS, change(12_701, 30_000).against(half));
		assertEquals(DriftVerdict.SURELY_EXCEEDS, change(-30_000, -12_701).against(half));
	}

	@Test
	void theFirstOfEqualLayersIsCalledTheLargest() {
		Layer first = layer("first", "10", "100", "100", "0", "0");
		Layer second = layer("second", "10", "100", "100", "0", "0");
		Drift drift = Drift.of(List.of(first, second), BENCH, Climate.of("30", "45"));
		assertEquals("first", drift.largest().layer().name());
	}

	@Test
	void anExactConstantIsARangeWithoutWidth() {
		assertEquals(MaterialRange.of("19", "19"), MaterialRange.exactly("19"));
	}

	@Test
	void theEndsOfEachRangeAreWithinIt() {
		Layer brass = layer("brass", "1", "19", "19", "0", "0");
		Drift drift = Drift.of(List.of(brass), Climate.of("-50", "0"), Climate.of("80", "100"));
		assertEquals(change(62, 63), drift.total());
		assertEquals(DriftVerdict.SURELY_EXCEEDS, drift.against(Length.ZERO, HINGE));
		assertEquals(DriftVerdict.SURELY_WITHIN, Drift.of(List.of(brass), BENCH, BENCH).against(Length.ZERO, HINGE));
	}

	@Test
	void badInputIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> MaterialRange.of("2", "1"));
		assertThrows(IllegalArgumentException.class, () -> Climate.of("20", "101"));
		assertThrows(IllegalArgumentException.class, () -> Climate.of("20", "-1"));
		assertThrows(IllegalArgumentException.class, () -> Climate.of("81", "50"));
		assertThrows(IllegalArgumentException.class, () -> Climate.of("-51", "50"));
		assertThrows(IllegalArgumentException.class, () -> layer("x", "-1", "0", "0", "0", "0"));
		assertThrows(IllegalArgumentException.class, () -> change(1, 0));
		assertThrows(IllegalArgumentException.class, () -> Drift.of(List.of(), BENCH, BENCH));
		Drift drift = Drift.of(List.of(layer("x", "1", "0", "0", "0", "0")), BENCH, BENCH);
		assertThrows(IllegalArgumentException.class, () -> drift.against(Length.thou("-1"), HINGE));
	}

	private static long magnitude(LayerDrift layer) {
		return Math.max(layer.change().low().abs().nanometres(), layer.change().high().abs().nanometres());
	}

	private static double changeAtCorner(List<Layer> stack, int corner, Climate home) {
		double sum = 0;
		for (int i = 0; i < stack.size(); i++) {
			Layer layer = stack.get(i);
			double expansion = end(layer.expansion(), corner >> 2 * i & 1);
			double swelling = end(layer.swelling(), corner >> 2 * i + 1 & 1);
			sum += layer.thickness().nanometres() * (expansion * 1e-6 * (home.celsius().doubleValue() - 20)
					+ swelling * 1e-2 * (home.relativeHumidity().doubleValue() - 45));
		}
		return sum;
	}

	private static double end(MaterialRange range, int end) {
		return (end == 0 ? range.low() : range.high()).doubleValue();
	}

	private static List<Layer> randomStack(SplittableRandom random) {
		List<Layer> stack = new ArrayList<>();
		for (int i = random.nextInt(1, 5); i > 0; i--) {
			stack.add(new Layer("layer " + i, new Length(random.nextLong(0, 3_000_000)),
					randomRange(random, 300), randomRange(random, 20)));
		}
		return stack;
	}

	private static MaterialRange randomRange(SplittableRandom random, int most) {
		long low = random.nextLong(-most, most);
		return new MaterialRange(BigDecimal.valueOf(low, 2), BigDecimal.valueOf(low + random.nextLong(most), 2));
	}

	private static Layer layer(String name, String thou, String e1, String e2, String s1, String s2) {
		return new Layer(name, Length.thou(thou), MaterialRange.of(e1, e2), MaterialRange.of(s1, s2));
	}

	private static HeightChange change(long low, long high) {
		return new HeightChange(new Length(low), new Length(high));
	}
}
