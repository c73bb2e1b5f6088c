package padwright.engine.acoustics;

import static padwright.engine.acoustics.Complexes.assertNear;
import static padwright.engine.acoustics.Complexes.parse;

import java.util.ArrayList;
import java.util.List;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Input impedances that the tests of openwind, Inria's open-source library for wind instruments, hold it to. All with
 * dry air after Chaigne and Kergomard.
 */
class WholeChainTest {

	/** At 25 °C, with a radiating piston at the right end. */
	private static final AirConstants WARM = AirModel.CHAIGNE_KERGOMARD.at(25);

	/** Cylinder of 0.2 m, radius 5 mm, 2000 Hz. The library gives it to 1e-5 by finite elements. */
	@Test
	void cylinder() {
		assertNear(parse("2439755.43368212+j12253572.5726607"),
				impedance(2000, WARM, 0.005, Radiation.PISTON, Cone.cylinder(0.2, 0.005)), 2e-5);
	}

	/** The same without losses is held to a closed formula: Z = (Zr + j Zc tan kL) / (1 + j Zr tan(kL) / Zc). */
	@Test
	void cylinderWithAlmostNoLosses() {
		AirConstants thin = new AirConstants(WARM.speed(), WARM.density(), 1e-16, 1e-14, WARM.heatCapacity(),
				WARM.heatRatio());
		assertNear(parse("447766.01048075+j10935095.38528343"),
				impedance(2000, thin, 0.005, Radiation.PISTON, Cone.cylinder(0.2, 0.005)), 1e-6);
	}

	/** Tapers at 1000 Hz in so many pieces that losses along them are right; radii in mm. */
	@ParameterizedTest
	@CsvSource({ "5,10,0,0,260122.39629807+j3390973.9706133", "5,10,10,3,140224.59873365+j4543295.37955805" })
	void tapers(double near, double far, double nextNear, double nextFar, String expected) {
		List<Element> elements = new ArrayList<>(taper(nextNear > 0 ? 0.1 : 0.2, near, far, 1000));
		if (nextNear > 0) {
			elements.addAll(taper(0.1, nextNear, nextFar, 1000));
		}
		double end = ((Cone) elements.get(elements.size() - 1)).far();
		assertNear(parse(expected), impedance(1000, WARM, end, Radiation.PISTON, elements.toArray(Element[]::new)),
				3e-8);
	}

	/** A cylinder of 5 mm, a step to 8 mm, a taper to 10 mm, without and with the mass at the step. */
	@ParameterizedTest
	@CsvSource({ "false,1023315.9226162+j6656105.82543338", "true,1051784.01738368+j6739608.3948181" })
	void step(boolean mass, String expected) {
		List<Element> elements = new ArrayList<>(List.of(Cone.cylinder(0.1, 0.005)));
		if (mass) {
			elements.add(new Step(0.005, 0.008));
		}
		elements.addAll(taper(0.1, 8, 10, 1000));
		assertNear(parse(expected), impedance(1000, WARM, 0.01, Radiation.PISTON, elements.toArray(Element[]::new)),
				3e-8);
	}

	/**
	 * Taper 5 to 8 mm, step to 5 mm with its mass, exponential flare to 30 mm, two open holes, the same radiation from
	 * all openings: 500 Hz, 20 °C. Asserted there to 1e-10; the flare is cut into straight pieces here.
	 */
	@ParameterizedTest
	@CsvFileSource(resources = "whole-chain.csv", numLinesToSkip = 1)
	void taperStepFlareAndTwoHoles(String opening, String expected, double share) {
		Ending ending = opening.equals("CLOSED") ? new Ending.Stopped() : new Ending.Open(Radiation.valueOf(opening));
		AirConstants air = AirModel.CHAIGNE_KERGOMARD.at(20);
		List<Element> elements = new ArrayList<>(taper(0.05, 5, 6.5, 1000));
		elements.add(Tubes.sideHole(HoleModel.DUBOS, false, 0.003, 0.005, 0.0065, ending));
		elements.addAll(taper(0.05, 6.5, 8, 1000));
		elements.add(new Step(0.008, 0.005));
		elements.addAll(flare(0, 0.15, 1500));
		elements.add(Tubes.sideHole(HoleModel.DUBOS, false, 0.015, 0.007, flareRadius(0.15), ending));
		elements.addAll(flare(0.15, 0.2, 500));
		assertNear(parse(expected), new Chain(elements, new Tail(0.03, ending)).impedance(Tone.of(500, air)), share);
	}

	private static List<Element> flare(double from, double to, int pieces) {
		List<Element> flare = new ArrayList<>();
		double length = (to - from) / pieces;
		for (int piece = 0; piece < pieces; piece++) {
			double start = from + piece * length;
			flare.add(new Cone(length, flareRadius(start), flareRadius(start + length)));
		}
		return flare;
	}

	private static double flareRadius(double place) {
		return 0.005 * StrictMath.pow(6, place / 0.2);
	}

	private static List<Element> taper(double length, double near, double far, int pieces) {
		return new Cone(length, near / 1000, far / 1000).divided(pieces);
	}

	private static Complex impedance(double hertz, AirConstants air, double end,
			Radiation radiation, Element... elements) {
		return new Chain(List.of(elements), new Tail(end, new Ending.Open(radiation))).impedance(Tone.of(hertz, air));
	}
}
