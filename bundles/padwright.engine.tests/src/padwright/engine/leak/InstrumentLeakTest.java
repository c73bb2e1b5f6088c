package padwright.engine.leak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

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
		assertEquals(Length.ZERO, KeyLeak.of(pad("A", even(0)), TESTER).equivalentHole());
	}

	@Test
	void keysAreRankedWorstFirstAndAddUp() {
		InstrumentLeak leak = InstrumentLeak.of(
				List.of(pad("A", even(12_700)), pad("B", even(50_800)), pad("C", even(12_700)), pad("D", even(0))),
				TESTER);
		assertEquals(List.of("B", "A", "C", "D"), leak.ranked().stream().map(KeyLeak::key).toList());
		double sum = leak.ranked().stream().mapToDouble(KeyLeak::millilitresPerMinute).sum();
		assertEquals(sum, leak.millilitresPerMinute(), 1e-9);
	}

	/** Areas of holes at one pressure add, so the squares of the diameters do; derived here. */
	@Test
	void squaresOfEquivalentHolesAddUp() {
		InstrumentLeak leak = InstrumentLeak.of(List.of(pad("A", even(12_700)), pad("B", even(30_000))), TESTER);
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
		InstrumentLeak before = InstrumentLeak.of(List.of(pad("A", even(12_700)), pad("B", even(50_800))), TESTER);
		InstrumentLeak after = InstrumentLeak.of(List.of(pad("A", even(5_000)), pad("B", even(0))), TESTER);
		List<LeakComparison.Row> rows = new LeakComparison(before, after).rows();
		assertEquals(List.of("B", "A"), rows.stream().map(row -> row.before().key()).toList());
		assertEquals(List.of("B", "A"), rows.stream().map(row -> row.after().key()).toList());
		assertEquals(0, rows.get(0).after().millilitresPerMinute());
	}

	@Test
	void badInputIsRefused() {
		assertThrows(IllegalArgumentException.class,
				() -> new SeatedPad("A", Length.ZERO, Length.millimetres("1"), even(0)));
		InstrumentLeak a = InstrumentLeak.of(List.of(pad("A", even(0))), TESTER);
		InstrumentLeak b = InstrumentLeak.of(List.of(pad("B", even(0))), TESTER);
		InstrumentLeak harder = InstrumentLeak.of(List.of(pad("A", even(0))), new Tester(3000, Air.at(20)));
		InstrumentLeak twice = InstrumentLeak.of(List.of(pad("A", even(0)), pad("A", even(0))), TESTER);
		assertThrows(IllegalArgumentException.class, () -> new LeakComparison(a, b));
		assertThrows(IllegalArgumentException.class, () -> new LeakComparison(a, harder));
		assertThrows(IllegalArgumentException.class, () -> new LeakComparison(twice, twice));
	}

	private static double square(Length length) {
		return (double) length.nanometres() * length.nanometres();
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
