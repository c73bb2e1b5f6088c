package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths in mm. */
class HoleModelTest {

	private static final AirConstants AIR = AirModel.CHAIGNE_KERGOMARD.at(20);
	private static final double ROUNDING = 6e-5;

	/** Computed from the publications named in {@link HoleModel} by another implementation. */
	@ParameterizedTest
	@CsvFileSource(resources = "tone-holes.csv", numLinesToSkip = 1)
	void correctionsOfThreeModels(double a, double b, double t, double nederveenInner, double dubosInner,
			double stillInner, double movingInner, double matching, double openAlong, double nederveenAlong,
			double openAlongOf1999, double dubosAlong, double keefeOpen, double closedAlong) {
		Junction<Complex> hole = junction(a, b, t);
		assertEquals(nederveenInner, inner(HoleModel.NEDERVEEN, hole), ROUNDING);
		assertEquals(dubosInner, inner(HoleModel.DUBOS, hole), ROUNDING);
		assertEquals(stillInner, inner(HoleModel.LEFEBVRE_SCAVONE, hole), ROUNDING);
		assertEquals(movingInner, moving(HoleModel.LEFEBVRE_SCAVONE, hole, 500), ROUNDING);
		assertEquals(matching, hole.matching().getReal() * 1000, ROUNDING);
		assertEquals(openAlong, along(HoleModel.LEFEBVRE_SCAVONE, hole, false), ROUNDING);
		assertEquals(closedAlong, along(HoleModel.LEFEBVRE_SCAVONE, hole, true), ROUNDING);
		assertEquals(nederveenAlong, along(HoleModel.NEDERVEEN, hole, false), ROUNDING);
		assertEquals(dubosAlong, along(HoleModel.DUBOS, hole, false), ROUNDING);
	}

	/**
	 * The form for long chimneys in Dubos et al. (1999), −bδ² / (1.78 tanh(1.84 t/b) + 0.94 + 0.54 δ + 0.285 δ²),
	 * closed with coth, and D. H. Keefe, J. Acoust. Soc. Am. 88 (1990) 35–51, computed from the publications: models
	 * differ by this much. The sign is common to all.
	 */
	@ParameterizedTest
	@CsvFileSource(resources = "tone-holes.csv", numLinesToSkip = 1)
	void modelsOfWhatAHoleTakesOffTheBoreAgreeInPart(double a, double b, double t, double nederveenInner,
			double dubosInner, double stillInner, double movingInner, double matching, double openAlong,
			double nederveenAlong, double openAlongOf1999, double dubosAlong, double keefeOpen, double closedAlong,
			double closedAlongOf1999, double keefeClosed) {
		Junction<Complex> hole = junction(a, b, t);
		for (HoleModel model : HoleModel.values()) {
			assertEquals(openAlongOf1999, along(model, hole, false), 0.37);
			assertEquals(closedAlongOf1999, along(model, hole, true), 0.26);
			assertTrue(along(model, hole, false) < keefeOpen);
			assertTrue(along(model, hole, true) < keefeClosed);
		}
	}

	/**
	 * Abstract of Nederveen, Jansen and van Hassel, Acustica 84 (1998) 957–966: the inner correction falls from 82 % to
	 * 16 % of the radius of the hole as that grows from nothing to the bore's. The models agree within 4 % of it.
	 */
	@Test
	void theInnerCorrectionFallsAsTheHoleGrows() {
		for (HoleModel model : HoleModel.values()) {
			assertEquals(0.82, inner(model, junction(10, 0.01, 3)) / 0.01, 0.01);
			assertEquals(0.16, inner(model, junction(10, 10, 3)) / 10, 0.11);
		}
		assertEquals(0.17, inner(HoleModel.NEDERVEEN, junction(10, 10, 3)) / 10, 0.011);
	}

	/** Computed from Dalmont, Nederveen and Joly (2001), equation 48. */
	@ParameterizedTest
	@CsvSource({ "7,3,8.5,1.6745", "7,1,8.5,5.4376", "6.5,2.5,8,1.8574" })
	void aPadLengthensTheHole(double b, double height, double pad, double lengthening) {
		assertEquals(lengthening, lengthening(b, height, pad), ROUNDING);
	}

	/**
	 * D. H. Keefe, J. Acoust. Soc. Am. 88 (1990) 35–51, has another way to the same: t_e = [tan(k t_g)/k + o] / (1 − q
	 * k tan(k t_g)) at 500 Hz, with o = b (1.40 − 0.58 δ²) and q = 0.61 b for a bare hole, o = q + b (π/4)(1 − 0.74 δ²)
	 * and q = 0.61 b (r/b)^0.18 (b/h)^0.39 under a pad, t_g = t + (bδ/8)(1 + 0.172 δ²). Both say alike how much a pad
	 * lengthens. The numbers are computed from his formulas.
	 */
	@ParameterizedTest
	@CsvSource({ "7,3,3,8.5,11.3170,13.1739", "7,3,1,8.5,11.3170,16.4884", "6.5,2.5,2.5,8,10.4474,12.4320" })
	void aPadLengthensTheHoleAsByKeefe(double b, double t, double height, double pad, double bare, double covered) {
		double ratio = b / 9.5;
		double factor = 0.61 * Math.pow(pad / b, 0.18) * Math.pow(b / height, 0.39);
		double keefeBare = keefe(b, t, b * (1.40 - 0.58 * ratio * ratio), 0.61 * b);
		double keefeCovered = keefe(b, t, b * (factor + Math.PI / 4 * (1 - 0.74 * ratio * ratio)), factor * b);
		assertEquals(bare, keefeBare, ROUNDING);
		assertEquals(covered, keefeCovered, ROUNDING);
		assertEquals(keefeCovered - keefeBare, lengthening(b, height, pad), 0.4);
	}

	private static double keefe(double b, double t, double outer, double inDivisor) {
		double k = 2 * Math.PI * 500 / AIR.speed() / 1000;
		double ratio = b / 9.5;
		double tangent = Math.tan(k * (t + b * ratio / 8 * (1 + 0.172 * ratio * ratio)));
		return (tangent / k + outer) / (1 - inDivisor * k * tangent);
	}

	private static double lengthening(double b, double height, double pad) {
		return 1000 * Ending.UnderPad.lengthening(metres(b), metres(height), metres(pad), metres(0.4)).getReal();
	}

	private static Junction<Complex> junction(double a, double b, double t) {
		return new Junction<>(metres(b), metres(t), metres(a), true);
	}

	private static Complex metres(double millimetres) {
		return new Complex(millimetres / 1000);
	}

	private static double inner(HoleModel model, Junction<Complex> hole) {
		return 1000 * model.inner(hole).getReal();
	}

	/** Length of the mass of the impedance into the hole, where it grows with the frequency. */
	private static double moving(HoleModel model, Junction<Complex> hole, double hertz) {
		Tone<Complex> tone = Tone.of(hertz, AIR);
		Complex ofAMetre = tone.inertance(hole.radius(), Complex.ONE);
		return 1000 * model.intoHole(tone, model.neck(hole, false)).divide(ofAMetre).getReal();
	}

	private static double along(HoleModel model, Junction<Complex> hole, boolean closed) {
		return 1000 * model.along(hole, closed).getReal();
	}
}
