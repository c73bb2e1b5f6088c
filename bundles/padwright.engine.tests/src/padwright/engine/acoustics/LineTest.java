package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class LineTest {

	/**
	 * Computed from Zwikker and Kosten's formulas with air after Chaigne and Kergomard, and with Keefe's, by an
	 * implementation that shares nothing with this one. Rounded to the last digit given.
	 */
	@ParameterizedTest
	@CsvFileSource(resources = "losses.csv", numLinesToSkip = 1)
	void lossesInCylinders(double millimetres, double hertz, double celsius, double number, double decay, double wave,
			double real, double imaginary, double speed, double decibels, double keefeDecay, double keefeWave,
			double keefeReal, double keefeImaginary, double decayInKeefeAir, double waveInKeefeAir) {
		double radius = millimetres / 1000;
		AirConstants air = AirModel.CHAIGNE_KERGOMARD.at(celsius);
		Line<Complex> line = Line.of(Tone.of(hertz, air), new Complex(radius));
		assertEquals(decay, line.gamma().getReal(), 6e-7);
		assertEquals(wave, line.gamma().getImaginary(), 6e-7);
		assertEquals(real, line.impedance().getReal() / air.impedance(radius), 6e-7);
		assertEquals(imaginary, line.impedance().getImaginary() / air.impedance(radius), 6e-7);
		assertEquals(speed, 2 * Math.PI * hertz / line.gamma().getImaginary(), 6e-4);
		assertEquals(decibels, line.gamma().getReal() * 20 / Math.log(10), 6e-5);
		assertEquals(number, radius * Math.sqrt(2 * Math.PI * hertz / (air.speed() * air.viscousLength())), 6e-5);
		Line<Complex> inKeefeAir = Line.of(Tone.of(hertz, AirModel.KEEFE.at(celsius)), new Complex(radius));
		assertEquals(decayInKeefeAir, inKeefeAir.gamma().getReal(), 6e-7);
		assertEquals(waveInKeefeAir, inKeefeAir.gamma().getImaginary(), 6e-7);
	}

	/**
	 * D. H. Keefe, J. Acoust. Soc. Am. 75 (1984) 58–62: series for wide tubes, stated for r = a √(ρω/µ) above 10.
	 * Leading terms read in two published programs, the terms in r⁻² and r⁻³ from memory.
	 */
	@ParameterizedTest
	@CsvFileSource(resources = "losses.csv", numLinesToSkip = 1)
	void lossesAreThoseOfKeefesSeries(double millimetres, double hertz, double celsius) {
		AirConstants air = AirModel.KEEFE.at(celsius);
		double radius = millimetres / 1000;
		double k = 2 * Math.PI * hertz / air.speed();
		double r = radius * Math.sqrt(2 * Math.PI * hertz * air.density() / air.viscosity());
		double share = r > 10 ? 6e-4 : 3e-2;
		Line<Complex> line = Line.of(Tone.of(hertz, air), new Complex(radius));
		double decay = k * (1.045 / r + 1.080 / (r * r) + 0.750 / (r * r * r));
		assertEquals(decay, line.gamma().getReal(), share * decay);
		assertEquals(k * (1 + 1.045 / r), line.gamma().getImaginary(), share * k);
		Complex impedance = line.impedance().divide(air.impedance(radius));
		assertEquals(1 + 0.369 / r, impedance.getReal(), share);
		assertEquals(-(0.369 / r + 1.149 / (r * r) + 0.303 / (r * r * r)), impedance.getImaginary(), share);
	}

	/** A taper that does not taper. */
	@Test
	void aConeOfEqualRadiiIsACylinder() {
		Tone<Complex> tone = Tone.of(523, AirModel.KEEFE.at(24));
		TwoPort<Complex> cylinder = Line.of(tone, new Complex(0.0095)).over(new Complex(0.11));
		for (double growth : new double[] { 0, 1e-12, -1e-9 }) {
			TwoPort<Complex> cone = new Cone(0.11, 0.0095, 0.0095 + growth).twoPort(tone);
			Complexes.assertNear(cylinder.a(), cone.a(), 1e-6);
			Complexes.assertNear(cylinder.b(), cone.b(), 1e-6);
			Complexes.assertNear(cylinder.c(), cone.c(), 1e-6);
			Complexes.assertNear(cylinder.d(), cone.d(), 1e-6);
		}
	}

	/** Mean radius by series and by logarithm, where one takes over from the other. */
	@Test
	void theTwoWaysToTheMeanRadiusMeet() {
		Tone<Complex> tone = Tone.of(1000, AirModel.KEEFE.at(24));
		double switching = 0.008 * 1.05 / 0.95;
		TwoPort<Complex> below = new Cone(0.1, 0.008, switching * (1 - 1e-13)).twoPort(tone);
		TwoPort<Complex> above = new Cone(0.1, 0.008, switching * (1 + 1e-13)).twoPort(tone);
		Complexes.assertNear(below.b(), above.b(), 1e-11);
		Complexes.assertNear(below.c(), above.c(), 1e-11);
	}
}
