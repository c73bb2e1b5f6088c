package padwright.engine.leak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.engine.length.Length;

class SlitTest {

	private static final Length MILLIMETRE = Length.millimetres("1");

	/** Bird, Stewart and Lightfoot, Transport Phenomena, table 1.1-2: dry air at one atmosphere. */
	@ParameterizedTest
	@CsvSource({ "0,17.16", "20,18.13", "40,19.08", "60,19.99", "10,17.645", "30,18.605" })
	void viscosityOfAirIsTheTabledOne(double celsius, double viscosity) {
		assertEquals(viscosity, Air.at(celsius).viscosity() * 1e6, 1e-9);
	}

	/** Plane Poiseuille flow, w 10 mm, L 1 mm, 1 kPa, 18.13 µPa·s; numbers computed from Q = w h³ Δp / (12 µ L). */
	@ParameterizedTest
	@CsvSource({ "0.5,5.649,0.0005", "1,45.19,0.005", "2,361.5,0.05", "3,1220,0.5" })
	void viscousFlowOfAThinSlit(String thou, double millilitresPerMinute, double rounding) {
		double flow = new Slit(0.01, Length.thou(thou), MILLIMETRE).conductance(Air.at(20)) * 1000 * 60e6;
		assertEquals(millilitresPerMinute, flow, rounding);
	}

	/** Plane Poiseuille: flow grows as the cube of the gap. */
	@ParameterizedTest
	@CsvSource({ "2,8", "4,64", "6,216" })
	void viscousFlowGrowsWithTheCube(int times, double ratio) {
		Slit narrow = new Slit(0.01, Length.thou("0.5"), MILLIMETRE);
		Slit wide = new Slit(0.01, Length.thou("0.5").times(times), MILLIMETRE);
		assertEquals(ratio, wide.conductance(Air.at(20)) / narrow.conductance(Air.at(20)), 1e-9 * ratio);
	}

	/** The root, put back into Δp = 12 µ L Q / (w h³) + ρ C Q² / (2 w² h²), gives the pressure. */
	@Test
	void flowWithEntryLossBalancesThePressure() {
		SplittableRandom random = new SplittableRandom(101);
		for (int i = 0; i < 2_000; i++) {
			double w = random.nextDouble(1e-4, 0.05);
			Length gap = new Length(random.nextLong(1, 500_000));
			Tester tester = new Tester(random.nextDouble(1, 20_000), Air.at(random.nextDouble(0, 60)));
			double flow = new Slit(w, gap, MILLIMETRE).millilitresPerMinute(tester) / 60e6;
			double h = gap.nanometres() * 1e-9;
			double viscous = 12 * tester.air().viscosity() * 1e-3 * flow / (w * h * h * h);
			double entry = tester.air().density() * 1.5 * flow * flow / (2 * w * w * h * h);
			assertEquals(tester.pascals(), viscous + entry, 1e-9 * tester.pascals());
		}
	}

	@Test
	void entryLossIsSmallInAFineGapAndMattersInAWideOne() {
		Tester tester = new Tester(1000, Air.at(20));
		assertEquals(1, shareLeft("0.5", tester), 0.001);
		assertEquals(1, shareLeft("1", tester), 0.01);
		assertTrue(shareLeft("2", tester) < 0.95);
		assertTrue(shareLeft("4", tester) < 0.7);
	}

	@Test
	void aWiderGapNeverLeaksLess() {
		Tester tester = new Tester(5000, Air.at(20));
		double last = 0;
		for (long gap = -1000; gap < 200_000; gap += 500) {
			double flow = new Slit(0.002, new Length(gap), MILLIMETRE).millilitresPerMinute(tester);
			assertTrue(gap <= 0 ? flow == 0 : flow > last, "gap " + gap);
			last = flow;
		}
	}

	@Test
	void badAirAndTestersAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> Air.at(-1));
		assertThrows(IllegalArgumentException.class, () -> Air.at(61));
		assertThrows(IllegalArgumentException.class, () -> new Air(0, 1));
		assertThrows(IllegalArgumentException.class, () -> new Air(1, 0));
		assertThrows(IllegalArgumentException.class, () -> new Tester(0, Air.at(20)));
		assertThrows(IllegalArgumentException.class, () -> new Tester(20_001, Air.at(20)));
		assertEquals(20_000, new Tester(20_000, Air.at(20)).pascals());
	}

	private static double shareLeft(String thou, Tester tester) {
		Slit slit = new Slit(0.01, Length.thou(thou), MILLIMETRE);
		return slit.millilitresPerMinute(tester) / (slit.conductance(tester.air()) * tester.pascals() * 60e6);
	}
}
