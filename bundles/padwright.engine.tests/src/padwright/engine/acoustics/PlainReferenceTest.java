package padwright.engine.acoustics;

import static padwright.engine.acoustics.Complexes.assertNear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random instruments by the engine and in the plainest way. */
class PlainReferenceTest {

	private static final AirConstants AIR = AirModel.damp(0.6, 0.02).at(24);
	private static final SoundModel MODEL = new SoundModel(AIR, HoleModel.DUBOS, true, Radiation.FLANGED_FIRST_ORDER,
			Radiation.UNFLANGED_FIRST_ORDER, Radiation.FLANGED_FIRST_ORDER);
	private static final double SAME = 1e-9;

	/** Cylinders and tapers finer than the engine divides, with holes open, closed and leaking. */
	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8, 9, 10 })
	void tubesWithHoles(long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		double hertz = random.nextDouble(150, 4000);
		PlainReference plain = new PlainReference(AIR, hertz);
		List<double[][][]> matrices = new ArrayList<>();
		List<BorePoint> bore = new ArrayList<>(List.of(new BorePoint(0, 0.018)));
		List<Hole> holes = new ArrayList<>();
		Fingering fingering = Fingering.closing(List.of());
		double radius = 0.009;
		double place = 0;
		for (int index = 1; index <= 8; index++) {
			double length = random.nextDouble(0.01, 0.05);
			double next = index % 2 == 0 ? radius : radius * random.nextDouble(0.9901, 1.0099);
			matrices.add(plain.cone(length, radius, next));
			radius = next;
			place += length;
			bore.add(new BorePoint(place, 2 * radius));
			Hole hole = new Hole("h" + index, place, random.nextDouble(0.005, 0.015), random.nextDouble(0.001, 0.005),
					0.001, Optional.empty());
			holes.add(hole);
			Cover cover = cover(index, random);
			fingering = fingering.with(hole.name(), cover);
			matrices.addAll(plain.hole(hole.diameter() / 2, hole.chimney(), radius, end(hole, cover, plain)));
		}
		matrices.add(plain.cone(0.07, radius, radius));
		bore.add(new BorePoint(place + 0.07, 2 * radius));
		double[] expected = plain.impedance(matrices, plain.radiation(radius, 0.6133, 0.25 / (0.6133 * 0.6133)));
		Impedance found = new Instrument(new Layout(bore, Optional.empty(), holes), MODEL).impedance(fingering, hertz);
		assertNear(new Complex(expected[0], expected[1]), new Complex(found.real(), found.imaginary()), SAME);
	}

	private static Cover cover(int index, SplittableRandom random) {
		return switch (index % 3) {
			case 0 -> Cover.OPEN;
			case 1 -> Cover.CLOSED;
			default -> new Cover.Leaking(List.of(random.nextDouble(1e-5, 2e-4)));
		};
	}

	private static double[] end(Hole hole, Cover cover, PlainReference plain) {
		double b = hole.diameter() / 2;
		if (cover instanceof Cover.Leaking leak) {
			return plain.slit(2 * Math.PI * (b + hole.rim() / 2), leak.gaps().get(0), hole.rim());
		}
		return cover == Cover.OPEN ? plain.radiation(b, 0.8236, 0.5 / (0.8236 * 0.8236)) : null;
	}

	/** With an embouchure hole and a cork. */
	@ParameterizedTest
	@ValueSource(doubles = { 200, 440, 1234.5, 3000 })
	void headWithCork(double hertz) {
		PlainReference plain = new PlainReference(AIR, hertz);
		double[] half = PlainReference.mul(plain.mass(0.0055 * (-0.37 + 0.087 * 0.0055 / 0.0095) * 0.0055 * 0.0055
				/ (0.0095 * 0.0095), 0.0095), PlainReference.num(0.5));
		double[][][] toCork = plain.cone(0.017, 0.0095, 0.0095);
		double[] cork = PlainReference.add(half, PlainReference.div(toCork[0][0], toCork[1][0]));
		double d = 0.0055 / 0.0095;
		double inner = 0.0055 * (0.82 - 0.193 * d - 1.09 * d * d + 1.27 * d * d * d - 0.71 * d * d * d * d)
				+ 0.0055 * d / 8 * (1 + 0.207 * d * d * d);
		double[] into = PlainReference.sub(plain.mass(inner, 0.0055),
				PlainReference.mul(half, PlainReference.num(0.5)));
		double[] expected = plain.impedance(
				List.of(plain.cone(0.005, 0.0055, 0.0055), plain.series(into), plain.shunt(cork), plain.series(half),
						plain.cone(0.6, 0.0095, 0.0095)),
				plain.radiation(0.0095, 0.6133, 0.25 / (0.6133 * 0.6133)));
		Impedance found = new Instrument(Tubes.withCork(17, 600), MODEL).impedance(Tubes.fingering(""), hertz);
		assertNear(new Complex(expected[0], expected[1]), new Complex(found.real(), found.imaginary()), SAME);
	}
}
