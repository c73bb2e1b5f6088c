package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** No published measurement of small leaks was found: the numbers are computed from first principles. */
class LeakTest {

	private static final AirConstants AIR = AirModel.CHAIGNE_KERGOMARD.at(20);
	private static final Tone<Complex> A4 = Tone.of(440, AIR);

	/** Zwikker and Kosten's impedance a length, of round holes without ends; sizes in mm. */
	@ParameterizedTest
	@CsvSource({ "0.05,1,20,7.362644e9+j2.570011e7", "0.25,1,440,1.295272e7+j2.217440e7" })
	void roundHole(double radius, double length, double hertz, String expected) {
		Leak leak = new Leak.Round(radius / 1000, length / 1000, 0);
		Complexes.assertNear(Complexes.parse(expected), impedance(leak, hertz), 1e-6);
	}

	/** Poiseuille's 8 µ t / (π b⁴) with the inertia (4/3) ρ t / (π b²), both for a fine hole. */
	@Test
	void aFineRoundHoleIsPoiseuilles() {
		double area = Math.PI * 0.05e-3 * 0.05e-3;
		Complex expected = new Complex(8 * AIR.viscosity() * 1e-3 * Math.PI / (area * area),
				2 * Math.PI * 20 * 4 / 3 * AIR.density() * 1e-3 / area);
		Complexes.assertNear(expected, impedance(new Leak.Round(0.05e-3, 1e-3, 0), 20), 1e-6);
	}

	/** A slit of 10 mm by 0.02 mm, 1 mm deep. */
	@Test
	void slit() {
		Complexes.assertNear(Complexes.parse("2.710598e9+j1.998297e7"), impedance(new Leak.Slit(0.01, 2e-5, 1e-3), 440),
				1e-6);
	}

	/** Plane Poiseuille flow with the inertia (6/5) ρ l / (w h), for fine slits; and all inertia for wide ones. */
	@ParameterizedTest
	@CsvSource({ "1,1e-10", "5,1e-7", "20,1e-4" })
	void aFineSlitIsPoiseuilles(double micrometres, double error) {
		double h = micrometres * 1e-6;
		Complex expected = new Complex(12 * AIR.viscosity() * 1e-3 / (0.01 * h * h * h),
				2 * Math.PI * 440 * 1.2 * AIR.density() * 1e-3 / (0.01 * h));
		Complexes.assertNear(expected, impedance(new Leak.Slit(0.01, h, 1e-3), 440), error);
	}

	@Test
	void aWideSlitIsAllMass() {
		Complex expected = new Complex(0, 2 * Math.PI * 4000 * AIR.density() * 1e-3 / (0.01 * 0.005));
		Complexes.assertNear(expected, impedance(new Leak.Slit(0.01, 0.005, 1e-3), 4000), 0.02);
	}

	/** Where the series takes over from the hyperbolic tangent. */
	@Test
	void theTwoWaysToASlitMeet() {
		double h = 2 * 0.1 * Math.sqrt(AIR.viscosity() / (AIR.density() * 2 * Math.PI * 440));
		Complex below = impedance(new Leak.Slit(0.01, h * (1 - 1e-12), 1e-3), 440);
		Complexes.assertNear(below, impedance(new Leak.Slit(0.01, h * (1 + 1e-12), 1e-3), 440), 1e-10);
	}

	@Test
	void aRimIsItsSlitsBesideEachOther() {
		List<Double> gaps = IntStream.range(0, 24).mapToObj(station -> (station - 8) * 1e-6).toList();
		Complex sum = Complex.ZERO;
		for (double gap : gaps) {
			sum = sum.add(admittance(new Leak.Slit(2 * Math.PI * 0.0075 / 24, gap, 0.8e-3)));
		}
		Complexes.assertNear(sum, admittance(new Leak.Rim(0.0075, 0.8e-3, gaps)), 1e-13);
		assertEquals(Complex.ZERO, admittance(new Leak.Rim(0.0075, 0.8e-3, Collections.nCopies(24, -1e-6))));
	}

	/**
	 * A tube of radius 9.5 mm and 600 mm long with a leak in the middle: how far the first three minima move, and how
	 * deep they are. A leak at a node of the pressure does nothing.
	 */
	@ParameterizedTest
	@CsvFileSource(resources = "leaking-tube.csv", numLinesToSkip = 1)
	void aLeakMovesAndWeakens(String kind, double millimetres, double first, double second, double third,
			double firstDepth, double secondDepth, double thirdDepth) {
		Leak leak = kind.equals("round") ? new Leak.Round(millimetres / 1000, 1e-3, 1.6)
				: new Leak.Slit(0.01, millimetres / 1000, 1e-3);
		Instrument tight = tube(List.of());
		Instrument leaking = tube(List.of(new Layout.LeakAt(0.3, leak)));
		check(tight, leaking, 280.56, first, -29.85, firstDepth);
		check(tight, leaking, 562.79, second, -26.57, secondDepth);
		check(tight, leaking, 845.30, third, -24.47, thirdDepth);
	}

	private static void check(Instrument tight, Instrument leaking, double hertz, double cents, double depth,
			double leakingDepth) {
		double before = Tubes.extrema(tight, Tubes.fingering(""), hertz - 3, hertz + 3, false).get(0);
		double about = before * Math.pow(2, cents / 1200);
		double after = Tubes.extrema(leaking, Tubes.fingering(""), about - 5, about + 5, false).get(0);
		assertEquals(hertz, before, 0.006);
		assertEquals(depth, depth(tight, before), 0.006);
		assertEquals(cents, 1200 * Math.log(after / before) / Math.log(2), cents < 1 ? 0.02 : 0.1);
		assertEquals(leakingDepth, depth(leaking, after), cents < 10 ? 0.006 : 0.06);
	}

	private static double depth(Instrument tube, double hertz) {
		return 20 * Math.log10(tube.impedance(Tubes.fingering(""), hertz).magnitude() / tube.characteristicImpedance());
	}

	private static Instrument tube(List<Layout.LeakAt> leaks) {
		return new Instrument(new Layout(List.of(Tubes.point(0, 19), Tubes.point(600, 19)), Optional.empty(), List.of(),
				leaks), Tubes.TWENTY);
	}

	@Test
	void badLeaksAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> new Leak.Round(0, 1e-3, 0));
		assertThrows(IllegalArgumentException.class, () -> new Leak.Round(1e-3, 1e-3, 3));
		assertThrows(IllegalArgumentException.class, () -> new Leak.Slit(-1, 1e-5, 1e-3));
		assertThrows(IllegalArgumentException.class, () -> new Leak.Slit(0.01, 1e-5, 0));
		assertThrows(IllegalArgumentException.class, () -> new Leak.Slit(0.01, Double.NaN, 1e-3));
		assertThrows(IllegalArgumentException.class, () -> new Leak.Rim(0.007, 1e-3, List.of()));
		assertTrue(admittance(new Leak.Slit(0.01, 0, 1e-3)).isZero());
	}

	private static Complex impedance(Leak leak, double hertz) {
		return leak.admittance(Tone.of(hertz, AIR), Element.complex(leak.sizes())).reciprocal();
	}

	private static Complex admittance(Leak leak) {
		return leak.admittance(A4, Element.complex(leak.sizes()));
	}
}
