package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.util.FieldSinhCosh;

/**
 * A round tube with friction and heat at its wall, after Zwikker and Kosten, Sound Absorbing Materials (1949), exact
 * while only plane waves travel (ka below 1.84) and the tube is not curved much.
 *
 * @param gamma of the wave, e^(−γx), in 1/m: its decay and j times its wave number
 * @param impedance of the wave in Pa·s/m³
 */
record Line<T extends CalculusFieldElement<T>>(T gamma, T impedance) {

	static <T extends CalculusFieldElement<T>> Line<T> of(Tone<T> tone, T radius) {
		AirConstants air = tone.air();
		T square = radius.multiply(radius);
		T q = tone.imaginaryWavenumber().multiply(square).negate();
		T viscous = BesselRatio.of(q.divide(air.viscousLength()), tone.numbers());
		T thermal = BesselRatio.of(q.divide(air.thermalLength()), tone.numbers());
		T mass = viscous.reciprocal().multiply(-2).add(1).multiply(air.density() / Math.PI).divide(square);
		T spring = thermal.negate().add(2).reciprocal().multiply(2 * (air.heatRatio() - 1)).add(1)
				.multiply(Math.PI / (air.density() * air.speed() * air.speed())).multiply(square);
		T gamma = mass.multiply(spring).sqrt().multiply(tone.s());
		return new Line<>(gamma, mass.multiply(tone.s()).divide(gamma));
	}

	TwoPort<T> over(T length) {
		FieldSinhCosh<T> wave = gamma.multiply(length).sinhCosh();
		return new TwoPort<>(wave.cosh(), impedance.multiply(wave.sinh()), wave.sinh().divide(impedance), wave.cosh());
	}
}
