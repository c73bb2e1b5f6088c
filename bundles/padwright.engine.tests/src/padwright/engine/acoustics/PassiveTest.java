package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static padwright.engine.acoustics.Complexes.assertNear;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds of everything that makes no sound by itself; derived here. */
class PassiveTest {

	private static final AirConstants AIR = AirModel.CHAIGNE_KERGOMARD.at(22);

	/** Reciprocity: ad − bc = 1. The terms grow with hundreds of elements, and the rest that is left with them. */
	@Test
	void aChainOfHundredsOfElementsIsReciprocal() {
		SplittableRandom random = new SplittableRandom(5);
		for (int trial = 0; trial < 20; trial++) {
			Tone<Complex> tone = Tone.of(random.nextDouble(100, 5000), AIR);
			TwoPort<Complex> product = TwoPort.series(Complex.ZERO);
			for (Element element : elements(random, 300)) {
				TwoPort<Complex> matrix = element.twoPort(tone);
				assertNear(Complex.ONE, determinant(matrix), 1e-11);
				product = product.then(matrix);
			}
			double terms = product.a().multiply(product.d()).norm() + product.b().multiply(product.c()).norm();
			assertEquals(0, determinant(product).subtract(1).norm(), 1e-12 * (1 + terms));
		}
	}

	/** An element turned round has a and d exchanged. */
	@Test
	void aTurnedTaperIsTheSameFromItsOtherSide() {
		Tone<Complex> tone = Tone.of(777, AIR);
		TwoPort<Complex> one = new Cone(0.1, 0.007, 0.009).twoPort(tone);
		TwoPort<Complex> turned = new Cone(0.1, 0.009, 0.007).twoPort(tone);
		assertNear(one.a(), turned.d(), 1e-12);
		assertNear(one.d(), turned.a(), 1e-12);
		assertNear(one.b(), turned.b(), 1e-12);
		assertNear(one.c(), turned.c(), 1e-12);
	}

	/** Energy: nothing comes out that was not put in. */
	@Test
	void noInputHasANegativeResistance() {
		SplittableRandom random = new SplittableRandom(6);
		for (int trial = 0; trial < 200; trial++) {
			Ending end = random.nextBoolean() ? new Ending.Stopped() : new Ending.Open(Radiation.UNFLANGED);
			Chain chain = new Chain(elements(random, random.nextInt(1, 40)), new Tail(0.009, end));
			Complex impedance = chain.impedance(Tone.of(random.nextDouble(50, 5000), AIR));
			assertTrue(impedance.getReal() > 0, () -> impedance.toString());
		}
	}

	@ParameterizedTest
	@EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NONE")
	void everyEndTakesEnergy(Radiation radiation) {
		for (double hertz = 20; hertz < 8000; hertz *= 1.3) {
			assertTrue(radiation.impedance(Tone.of(hertz, AIR), new Complex(0.0095)).getReal() > 0);
		}
	}

	/** Open, the hole must be finer: it ends in a mass over its area, not in a spring. */
	@ParameterizedTest
	@EnumSource(HoleModel.class)
	void aVanishingHoleIsNoHole(HoleModel model) {
		checkLikeNone(Tubes.sideHole(model, true, 1e-5, 0.003, 0.0095, new Ending.Open(Radiation.FLANGED)), 1e-6);
		checkLikeNone(Tubes.sideHole(model, true, 2e-5, 0.003, 0.0095, new Ending.Stopped()), 1e-6);
		checkLikeNone(Tubes.sideHole(model, true, 2e-5, 0, 0.0095, new Ending.Stopped()), 1e-6);
	}

	private static void checkLikeNone(Element hole, double error) {
		Cone tube = Cone.cylinder(0.3, 0.0095);
		Tail tail = new Tail(0.0095, new Ending.Open(Radiation.UNFLANGED));
		Tone<Complex> tone = Tone.of(440, AIR);
		assertNear(new Chain(List.of(tube, tube), tail).impedance(tone),
				new Chain(List.of(tube, hole, tube), tail).impedance(tone), error);
	}

	/** A closed hole is a small volume: at low frequencies its flow is jωV/(ρc²) of the pressure, chimney and lens. */
	@Test
	void aClosedHoleIsAVolume() {
		Tone<Complex> tone = Tone.of(1, new AirConstants(343, 1.2, 1e-12, 1e-12, 1004, 1.4));
		Element hole = Tubes.sideHole(HoleModel.NEDERVEEN, false, 0.006, 0.004, 0.0095, new Ending.Stopped());
		double volume = Math.PI * 0.006 * 0.006 * 0.004;
		assertNear(new Complex(0, 2 * Math.PI * volume / (1.2 * 343 * 343)), hole.twoPort(tone).c(), 1e-4);
	}

	@Test
	void aVanishingLeakIsNoLeak() {
		Instrument flute = new Instrument(Tubes.sevenHoles(), Tubes.TWENTY);
		Fingering closed = Tubes.fingering("xxxxxxx");
		Impedance tight = flute.impedance(closed, 440);
		Fingering fine = closed.with("3", new Cover.Leaking(Collections.nCopies(24, 1e-9)));
		Fingering shut = closed.with("3", new Cover.Leaking(Collections.nCopies(24, 0.0)));
		assertEquals(tight, flute.impedance(shut, 440));
		assertNear(new Complex(tight.real(), tight.imaginary()), complex(flute.impedance(fine, 440)), 1e-8);
	}

	/** A gap as high as the hole is wide is no worse than an open hole, and a fine one nearly as good as a closed. */
	@Test
	void aLeakLiesBetweenClosedAndOpen() {
		Instrument flute = new Instrument(Tubes.sevenHoles(), Tubes.TWENTY);
		Fingering closed = Tubes.fingering("xxxxxxx");
		double low = first(flute, closed);
		double last = low;
		for (double gap : new double[] { 1e-5, 3e-5, 1e-4, 3e-4, 1e-3, 3e-3 }) {
			double hertz = first(flute, closed.with("7", new Cover.Leaking(Collections.nCopies(24, gap))));
			assertTrue(hertz >= last - 1e-3, "gap " + gap);
			last = hertz;
		}
		assertTrue(last < first(flute, Tubes.fingering("xxxxxxo")) * 1.02);
		assertTrue(last > low * 1.05);
	}

	private static double first(Instrument flute, Fingering fingering) {
		return flute.sound(new TargetNote("", 270, fingering)).played().orElseThrow().hertz();
	}

	private static Complex complex(Impedance impedance) {
		return new Complex(impedance.real(), impedance.imaginary());
	}

	private static Complex determinant(TwoPort<Complex> matrix) {
		return matrix.a().multiply(matrix.d()).subtract(matrix.b().multiply(matrix.c()));
	}

	private static List<Element> elements(SplittableRandom random, int number) {
		List<Element> elements = new ArrayList<>();
		for (int index = 0; index < number; index++) {
			elements.add(element(random, index));
		}
		return elements;
	}

	private static Element element(SplittableRandom random, int index) {
		double radius = random.nextDouble(0.004, 0.009);
		return switch (index % 6) {
			case 0 -> new Cone(random.nextDouble(0.001, 0.02), 0.009, random.nextDouble(0.005, 0.012));
			case 1 -> Tubes.sideHole(HoleModel.values()[random.nextInt(3)], random.nextBoolean(), radius, 0.003, 0.0095,
					ending(random, radius));
			case 2 -> new Step(0.009, random.nextDouble(0.006, 0.012));
			case 3 -> new WallLeak(new Leak.Round(random.nextDouble(1e-5, 1e-3), 1e-3, 1.6));
			case 4 -> new WallLeak(new Leak.Slit(0.01, random.nextDouble(-1e-5, 1e-4), 1e-3));
			default -> new Branch(List.of(Cone.cylinder(random.nextDouble(0.01, 0.05), radius)),
					new Tail(radius, ending(random, radius)));
		};
	}

	private static Ending ending(SplittableRandom random, double radius) {
		Ending open = new Ending.Open(Radiation.FLANGED);
		Ending pad = new Ending.UnderPad(Radiation.FLANGED, random.nextDouble(5e-4, 1e-2));
		Ending through = new Ending.Narrowed(radius * random.nextDouble(0.2, 1), 0.002, open);
		return switch (random.nextInt(6)) {
			case 0 -> new Ending.Stopped();
			case 1 -> open;
			case 2 -> pad;
			case 3 -> through;
			case 4 -> new Ending.Both(pad, through);
			default -> new Ending.Leaking(new Leak.Rim(radius, 1e-3, Optional.of(5e-5).stream().toList()));
		};
	}
}
