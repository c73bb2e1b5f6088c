package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.complex.Complex;
import org.hipparchus.util.FieldSinhCosh;

/**
 * A round tube with friction and heat at its wall, after Zwikker and Kosten, Sound Absorbing Materials (1949), exact
 * while only plane waves travel (ka below 1.84) and the tube is not curved much. Friction makes the mass of the air
 * greater by 1 / (1 − F(q)) and heat makes it softer by 1 + (γ − 1) F(q'), with F = 2 J₁(z) / (z J₀(z)), z² = q and q
 * from the friction or the heat at the wall.
 *
 * @param gamma of the wave, e^(−γx), in 1/m: its decay and j times its wave number
 * @param impedance of the wave in Pa·s/m³
 */
record Line<T extends CalculusFieldElement<T>>(T gamma, T impedance) {

	static <T extends CalculusFieldElement<T>> Line<T> of(Tone<T> tone, T radius) {
		AirConstants air = tone.air();
		Complex s = tone.numbers().value(tone.s());
		Complex a = tone.numbers().value(radius);
		Complex q = s.multiply(a).multiply(a).divide(-air.speed());
		Wall friction = Wall.of(q.divide(air.viscousLength()));
		Wall heat = Wall.of(q.divide(air.thermalLength()));
		Complex mass = friction.free().reciprocal();
		Complex softness = heat.held().multiply(air.heatRatio() - 1).add(1);
		Complex gamma = mass.multiply(softness).sqrt().multiply(s).divide(air.speed());
		Complex impedance = mass.multiply(s).divide(gamma).multiply(air.density() / Math.PI).divide(a.multiply(a));
		if (tone.numbers().isPlain()) {
			return new Line<>(tone.numbers().constant(gamma), tone.numbers().constant(impedance));
		}
		Complex byMass = friction.slope().divide(friction.free());
		Complex bySoftness = heat.slope().multiply(air.heatRatio() - 1).divide(softness);
		return grown(tone, radius, gamma, impedance, byMass.add(bySoftness), byMass.subtract(bySoftness));
	}

	/**
	 * With the derivatives by s and the radius a: the logarithms of mass and softness grow by the slopes of F for each
	 * growth of ln q = ln s + 2 ln a, half of their sum is in γ and half of their difference in the impedance.
	 */
	private static <T extends CalculusFieldElement<T>> Line<T> grown(Tone<T> tone, T radius, Complex gamma,
			Complex impedance, Complex sum, Complex difference) {
		Complex s = tone.numbers().value(tone.s());
		Complex a = tone.numbers().value(radius);
		T ofGamma = tone.numbers().function(tone.s(), radius, gamma,
				gamma.multiply(sum.multiply(0.5).add(1)).divide(s), gamma.multiply(sum).divide(a));
		T ofImpedance = tone.numbers().function(tone.s(), radius, impedance,
				impedance.multiply(difference.multiply(0.5)).divide(s),
				impedance.multiply(difference.subtract(2)).divide(a));
		return new Line<>(ofGamma, ofImpedance);
	}

	TwoPort<T> over(T length) {
		FieldSinhCosh<T> wave = gamma.multiply(length).sinhCosh();
		return new TwoPort<>(wave.cosh(), impedance.multiply(wave.sinh()), wave.sinh().divide(impedance), wave.cosh());
	}

	/**
	 * What a wall does.
	 *
	 * @param held F
	 * @param free 1 − F, without loss of digits
	 * @param slope of F by ln q
	 */
	private record Wall(Complex held, Complex free, Complex slope) {

		/** With w of {@link BesselRatio}: F = 2 / (2 − w) and 1 − F = −w / (2 − w). */
		static Wall of(Complex q) {
			Complex w = BesselRatio.of(q);
			Complex rest = w.negate().add(2);
			Complex held = rest.reciprocal().multiply(2);
			Complex slope = q.subtract(w.multiply(rest)).divide(rest.multiply(rest));
			return new Wall(held, w.divide(rest).negate(), slope);
		}
	}
}
