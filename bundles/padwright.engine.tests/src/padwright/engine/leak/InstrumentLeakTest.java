package padwright.engine.leak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

class InstrumentLeakTest {

	private static final Tester TESTER = new Tester(2000, Air.at(20));

	@Test
	void anEvenGapLeaksAsOneSlitAroundTheRim() {
		SeatedPad pad = pad("Fs", even(25_400));
		Slit around = new Slit(2 * Math.PI * 0.0075, Length.thou("1"), Length.millimetres("0.8"));
		assertEquals(around.conductance(TESTER.air()), pad.conductance(TESTER.air()), 1e-22);
		assertEquals(around.millilitresPerMinute(TESTER), pad.millilitresPerMinute(TESTER), 1e-9);
	}

	@Test
	void turningTheProfileChangesNothingAndAPressedPadLeaksNothing() {
		long[] gaps = new SplittableRandom(111).longs(24, -20_000, 60_000).toArray();
		long[] turned = new long[24];
		for (int i = 0; i < 24; i++) {
			turned[(i + 5) % 24] = gaps[i];
		}
		double flow = pad("A", RimProfile.ofNanometres(gaps)).millilitresPerMinute(TESTER);
		assertTrue(flow > 0);
		assertEquals(flow, pad("A", RimProfile.ofNanometres(turned)).millilitresPerMinute(TESTER), 1e-9 * flow);
		assertEquals(0, pad("A", even(-100)).millilitresPerMinute(TESTER));
		assertEquals(Length.ZERO, leak(likely("A", even(0))).equivalentHole());
	}

	@Test
	void keysAreRankedWorstFirstAndAddUp() {
		InstrumentLeak leak = leak(likely("A", even(12_700)), likely("B", even(50_800)), likely("C", even(12_700)), likely("D", even(0)));
		assertEquals(List.of("B", "A", "C", "D"), leak.ranked().stream().map(KeyLeak::key).toList());
		double sum = leak.ranked().stream().mapToDouble(key -> key.flow().expected()).sum();
		assertEquals(sum, leak.all().expected(), 1e-9);
	}

	/** Areas of holes at one pressure add, so the squares of the diameters do; derived here. */
	@Test
	void squaresOfEquivalentHolesAddUp() {
		InstrumentLeak leak = leak(likely("A", even(12_700)), likely("B", even(30_000)));
		double squares = leak.ranked().stream().mapToDouble(key -> square(key.equivalentHole())).sum();
		assertEquals(squares, square(leak.equivalentHole()), 1e-5 * squares);
	}

	/** Orifice equation by hand: 0.61 · π/4 · (0.5 mm)² · √(2 · 2000 / 1.2041) = 6.903 mL/s. */
	@Test
	void aHalfMillimetreHoleIsFound() {
		assertEquals(500_000, TESTER.equivalentHole(6.903 * 60).nanometres(), 50);
	}

	@Test
	void beforeAndAfterStandSideBySide() {
		InstrumentLeak before = leak(likely("A", even(12_700)), likely("B", even(50_800)));
		InstrumentLeak after = leak(likely("A", even(5_000)), likely("B", even(0)));
		List<LeakComparison.Row> rows = new LeakComparison(before, after).rows();
		assertEquals(List.of("B", "A"), rows.stream().map(row -> row.before().key()).toList());
		assertEquals(List.of("B", "A"), rows.stream().map(row -> row.after().key()).toList());
		assertEquals(0, rows.get(0).after().flow().expected());
	}

	/** Nineteen times out of twenty the flow lies at or below the high one of a hundred evenly spaced gaps. */
	@Test
	void whatIsNotKnownHasARange() {
		List<RimProfile> gaps = IntStream.range(0, 100).mapToObj(step -> even(step * 500L)).toList();
		LikelyFlow flow = leak(new LikelyPad("A", Length.millimetres("7.5"), Length.millimetres("0.8"), gaps)).ranked()
				.get(0).flow();
		assertEquals(pad("A", even(5 * 500)).millilitresPerMinute(TESTER), flow.low(), 1e-9);
		assertEquals(pad("A", even(95 * 500)).millilitresPerMinute(TESTER), flow.high(), 1e-9);
		assertEquals(gaps.stream().mapToDouble(gap -> pad("A", gap).millilitresPerMinute(TESTER)).average().orElseThrow(),
				flow.expected(), 1e-9);
		assertEquals(new LikelyFlow(0, 0, 0), InstrumentLeak.of(List.of(), TESTER).all());
	}

	@Test
	void badInputIsRefused() {
		assertThrows(IllegalArgumentException.class,
				() -> new LikelyPad("A", Length.millimetres("7.5"), Length.millimetres("0.8"), List.of()));
		assertThrows(IllegalArgumentException.class,
				() -> new SeatedPad("A", Length.ZERO, Length.millimetres("1"), even(0)));
		assertThrows(IllegalArgumentException.class,
				() -> new SeatedPad("A", Length.millimetres("7.5"), Length.ZERO, even(0)));
		InstrumentLeak a = leak(likely("A", even(0)));
		InstrumentLeak b = leak(likely("B", even(0)));
		InstrumentLeak harder = InstrumentLeak.of(List.of(likely("A", even(0))), new Tester(3000, Air.at(20)));
		InstrumentLeak twice = leak(likely("A", even(0)), likely("A", even(0)));
		assertThrows(IllegalArgumentException.class, () -> new LeakComparison(a, b));
		assertThrows(IllegalArgumentException.class, () -> new LeakComparison(a, harder));
		assertThrows(IllegalArgumentException.class, () -> new LeakComparison(twice, twice));
	}

	private static double square(Length length) {
		return (double) length.nanometres() * length.nanometres();
	}

	private static InstrumentLeak leak(LikelyPad... pads) {
		return InstrumentLeak.of(List.of(pads), TESTER);
	}

	private static LikelyPad likely(String key, RimProfile gap) {
		return new LikelyPad(key, Length.millimetres("7.5"), Length.millimetres("0.8"), List.of(gap));
	}

	private static SeatedPad pad(String key, RimProfile gap) {
		return new SeatedPad(key, Length.millimetres("7.5"), Length.millimetres("0.8"), gap);
	}

	private static RimProfile even(long nanometres) {
		long[] gaps = new long[ClockHour.STATIONS];
		Arrays.fill(gaps, nanometres);
		return RimProfile.ofNanometres(gaps);
	}
}
