package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Derivatives against differences. */
class SlopesTest {

	/** Of invented sizes: a step, tapers, a lip over the mouth hole, a leak in the wall, and every kind of cover. */
	private static final Layout LAYOUT = new Layout(
			List.of(Tubes.point(-18, 17), Tubes.point(140, 18.8), Tubes.point(150, 19), Tubes.point(150, 18),
					Tubes.point(400, 19.5), Tubes.point(600, 19)),
			Optional.of(new Mouth(0, 0.011, 0.005, 0.3)),
			List.of(Tubes.hole(1, 250, 7, 2.5), Tubes.hole(2, 290, 13, 2.6).under(new Cup(0.017, 0.003, 0, 0)),
					Tubes.hole(3, 330, 13.5, 2.7).under(new Cup(0.018, 0.0025, 0.006, 0.0035)),
					Tubes.hole(4, 360, 13.5, 2.7).under(new Cup(0.018, 0.0025, 0.006, 0.0035)),
					Tubes.hole(5, 405, 14, 2.4), Tubes.hole(6, 450, 14, 2.5).under(new Cup(0.018, 0.003, 0, 0)),
					Tubes.hole(7, 500, 14, 2.4)),
			List.of(new Layout.LeakAt(0.2, new Leak.Slit(0.02, 3e-5, 1e-3))));
	private static final Fingering FINGERING = new Fingering(Map.of("1", new Cover.Partly(0.4), "3",
			new Cover.Partly(0.2), "5", Cover.CLOSED, "6", new Cover.Leaking(Collections.nCopies(24, 4e-5)), "4",
			Cover.CLOSED));

	/** The two sides of a step, of which none can go alone. */
	private static final List<Dimension> STEP = List.of(new Dimension(Dimension.Part.BORE, "3", Measure.PLACE),
			new Dimension(Dimension.Part.BORE, "4", Measure.PLACE));

	private static final double PLAYED = instrument(LAYOUT, HoleModel.DUBOS)
			.sound(new TargetNote("", 520, FINGERING)).played().orElseThrow().hertz();

	/** By every dimension, and by the frequency. */
	@ParameterizedTest
	@EnumSource(HoleModel.class)
	void impedances(HoleModel model) {
		double hertz = 517;
		Instrument instrument = instrument(LAYOUT, model);
		Slopes slopes = instrument.slopes(FINGERING, hertz);
		Complexes.assertNear(instrument.sounding(FINGERING, hertz), slopes.impedance(), 1e-11);
		List<Dimension> dimensions = new ArrayList<>(LAYOUT.dimensions().keySet());
		assertTrue(dimensions.size() > 40);
		for (int index = 0; index < dimensions.size(); index++) {
			Dimension dimension = dimensions.get(index);
			if (STEP.contains(dimension)) {
				continue;
			}
			double step = 1e-6 * Math.max(1e-3, Math.abs(LAYOUT.dimensions().get(dimension)));
			Complex above = instrument(grown(dimension, step), model).sounding(FINGERING, hertz);
			Complex below = instrument(grown(dimension, -step), model).sounding(FINGERING, hertz);
			Complex difference = above.subtract(below).divide(2 * step);
			double scale = Math.max(difference.norm(), 1e-3 * slopes.impedance().norm());
			assertEquals(0, slopes.by(index).subtract(difference).norm() / scale, 2e-5, () -> dimension.toString());
		}
		Complex difference = instrument.sounding(FINGERING, hertz + 1e-3)
				.subtract(instrument.sounding(FINGERING, hertz - 1e-3)).divide(2 * Math.PI * 2e-3);
		Complexes.assertNear(difference, slopes.byOmega(), 1e-7);
	}

	/** A pitch moves by what its derivative says: each dimension 0.01 mm longer and shorter. */
	@Test
	void pitches() {
		Instrument instrument = instrument(LAYOUT, HoleModel.DUBOS);
		Map<Dimension, Double> cents = instrument.centsPerMetre(FINGERING, PLAYED);
		assertEquals(LAYOUT.dimensions().keySet(), cents.keySet());
		cents.forEach((dimension, slope) -> {
			if (STEP.contains(dimension)) {
				return;
			}
			double step = 1e-5;
			double moved = 1200 * Math.log(played(instrument(grown(dimension, step), HoleModel.DUBOS))
					/ played(instrument(grown(dimension, -step), HoleModel.DUBOS))) / Math.log(2);
			assertEquals(moved, slope * 2 * step, 1e-4 * Math.abs(moved) + 1e-5, () -> dimension.toString());
		});
	}

	/** Both sides of a step moved together. */
	@Test
	void aStepMoves() {
		Instrument instrument = instrument(LAYOUT, HoleModel.DUBOS);
		Map<Dimension, Double> cents = instrument.centsPerMetre(FINGERING, PLAYED);
		double moved = 1200 * Math.log(played(instrument(stepAt(0.15001), HoleModel.DUBOS))
				/ played(instrument(stepAt(0.14999), HoleModel.DUBOS))) / Math.log(2);
		assertEquals(moved, 2e-5 * STEP.stream().mapToDouble(cents::get).sum(), 1e-4 * Math.abs(moved));
	}

	private static Layout stepAt(double place) {
		return LAYOUT.with(Map.of(STEP.get(0), place, STEP.get(1), place));
	}

	/** All radiation laws that have a slope of their own. */
	@ParameterizedTest
	@EnumSource(Radiation.class)
	void radiation(Radiation radiation) {
		AirConstants air = AirModel.KEEFE.at(25);
		Layout tube = Tubes.cylinder(600, 19);
		SoundModel model = new SoundModel(air, HoleModel.DUBOS, true, radiation, radiation, radiation);
		Instrument instrument = new Instrument(tube, model);
		Fingering none = Fingering.closing(List.of());
		Complex difference = instrument.sounding(none, 700 + 1e-3).subtract(instrument.sounding(none, 700 - 1e-3))
				.divide(2 * Math.PI * 2e-3);
		Complexes.assertNear(difference, instrument.slopes(none, 700).byOmega(), 1e-7);
	}

	private static double played(Instrument instrument) {
		double[] around = { 0.985 * PLAYED, 1.015 * PLAYED };
		Complex[] impedances = { instrument.sounding(FINGERING, around[0]), instrument.sounding(FINGERING, around[1]) };
		return instrument.search(instrument.covered(FINGERING)).after(0, around, impedances).hertz();
	}

	private static Layout grown(Dimension dimension, double by) {
		return LAYOUT.with(Map.of(dimension, LAYOUT.dimensions().get(dimension) + by));
	}

	private static Instrument instrument(Layout layout, HoleModel model) {
		SoundModel usual = Tubes.TWENTY;
		return new Instrument(layout, new SoundModel(usual.air(), model, true, usual.holeEnd(), usual.boreEnd(),
				usual.mouthEnd()));
	}
}
