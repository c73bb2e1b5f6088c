package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VentingTest {

	private static final AirConstants AIR = AirModel.CHAIGNE_KERGOMARD.at(20);
	private static final SoundModel MODEL = new SoundModel(AIR, HoleModel.DUBOS, true, Radiation.FLANGED_FIRST_ORDER,
			Radiation.UNFLANGED_FIRST_ORDER, Radiation.FLANGED_FIRST_ORDER);
	private static final Fingering OPEN = Fingering.closing(List.of());

	/** A tube of 400 by 19 mm with a hole of 14 mm at 300 mm under a pad. */
	private static Instrument tube(double rise) {
		Hole hole = new Hole("A", 0.3, 0.014, 0.003, 0.0004, Optional.of(new Cup(0.017, rise, 0, 0)));
		return new Instrument(new Layout(List.of(Tubes.point(0, 19), Tubes.point(400, 19)), Optional.empty(),
				List.of(hole)), MODEL);
	}

	private static List<Venting> ventings(Instrument tube) {
		return Venting.of(tube, tube.sound(List.of(new TargetNote("low", 515, OPEN), new TargetNote("high", 1000, OPEN))),
				"A");
	}

	/**
	 * The lengthening by a pad 3 mm and 1 mm over such a hole is 1.6745 mm and 5.4376 mm by J.-P. Dalmont, C. J. Nederveen
	 * and N. Joly, J. Sound Vib. 244 (2001) 505–534, equation 48; computed apart from this project. What that does to
	 * the resonances is found here by halving, with matrices that share nothing with the engine.
	 */
	@ParameterizedTest
	@CsvSource({ "0.003,0.0016745,0", "0.001,0.0054376,0", "0.003,0.0016745,1", "0.001,0.0054376,1" })
	void aPadLengthensItsHoleAsPublished(double rise, double lengthening, int note) {
		double[] away = plainResonance(0, note);
		double[] under = plainResonance(lengthening, note);
		Venting.Effect effect = ventings(tube(0.002)).get(note).at(rise).orElseThrow();
		assertEquals(1200 * Math.log(under[0] / away[0]) / Math.log(2), effect.cents(), 0.02);
		assertEquals(20 * Math.log10(away[1] / under[1]), effect.decibels(), 0.002);
		assertTrue(effect.cents() < -3);
	}

	/** Its frequency, and its resistance. */
	private static double[] plainResonance(double lengthening, int note) {
		double low = note == 0 ? 430 : 850;
		double high = note == 0 ? 580 : 1100;
		while (high - low > 1e-7) {
			double middle = (low + high) / 2;
			if (plain(middle, lengthening)[1] < 0) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return new double[] { low, plain(low, lengthening)[0] };
	}

	private static double[] plain(double hertz, double lengthening) {
		PlainReference plain = new PlainReference(AIR, hertz);
		double[] outside = PlainReference.add(plain.radiation(0.007, 0.8236, 0.5 / (0.8236 * 0.8236)),
				plain.mass(lengthening, 0.007));
		List<double[][][]> matrices = new ArrayList<>();
		matrices.add(plain.cone(0.3, 0.0095, 0.0095));
		matrices.addAll(plain.hole(0.007, 0.003, 0.0095, outside));
		matrices.add(plain.cone(0.1, 0.0095, 0.0095));
		return plain.impedance(matrices, plain.radiation(0.0095, 0.6133, 0.25 / (0.6133 * 0.6133)));
	}

	/** The same as building the instrument with that rise. */
	@Test
	void aRiseDoesWhatAnotherInstrumentWouldDo() {
		double before = tube(0.02).sound(new TargetNote("low", 515, OPEN)).cents().orElseThrow();
		double after = tube(0.0015).sound(new TargetNote("low", 515, OPEN)).cents().orElseThrow();
		Venting venting = ventings(tube(0.003)).get(0);
		assertEquals(after - before, venting.at(0.0015).orElseThrow().cents() - venting.at(0.02).orElseThrow().cents(),
				1e-3);
	}

	@Test
	void fromSomeRiseOnNothingIsHeard() {
		List<Venting> ventings = ventings(tube(0.003));
		double enough = Venting.enough(ventings).orElseThrow();
		assertTrue(ventings.stream().allMatch(venting -> venting.at(enough).orElseThrow().isNothing()));
		assertTrue(ventings.stream().anyMatch(venting -> !venting.at(enough - 2e-5).orElseThrow().isNothing()));
		double least = Venting.least(ventings, effect -> effect.cents() > -10).orElseThrow();
		assertEquals(-10, ventings.stream().mapToDouble(venting -> venting.at(least).orElseThrow().cents()).min()
				.orElseThrow(), 0.2);
		assertEquals(Optional.empty(), Venting.least(ventings, effect -> effect.cents() > 1));
	}

	/** A shut hole, and one that no pad hangs over, have nothing to tell. */
	@Test
	void onlyOpenHolesUnderPadsCount() {
		Instrument tube = tube(0.003);
		List<NoteSound> shut = tube.sound(List.of(new TargetNote("shut", 410, new Fingering(Map.of("A", Cover.CLOSED)))));
		assertEquals(List.of(), Venting.of(tube, shut, "A"));
		Instrument bare = new Instrument(Tubes.cylinder(400, 19, Tubes.hole(1, 300, 14, 3)), MODEL);
		assertEquals(List.of(), Venting.of(bare, bare.sound(List.of(new TargetNote("low", 515, OPEN))), "1"));
	}
}
