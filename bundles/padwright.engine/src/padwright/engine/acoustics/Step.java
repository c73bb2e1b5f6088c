package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.CalculusFieldElement;

/**
 * A sudden change of radius, where the air that turns the corner adds mass: J. Kergomard and A. Garcia, Simple
 * discontinuities in acoustic waveguides at low frequencies, J. Sound Vib. 114 (1987) 465–479, in the polynomial that
 * the library openwind gives after it.
 *
 * @param near radius in m before it, more than 0
 * @param far radius in m behind it, more than 0
 */
record Step(double near, double far) implements Element {

	@Override
	public double[] sizes() {
		return new double[] { near, far };
	}

	@Override
	public <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes) {
		return TwoPort.series(near < far ? impedance(tone, sizes.get(0), sizes.get(1))
				: impedance(tone, sizes.get(1), sizes.get(0)));
	}

	/** From a narrow tube to a wide one. */
	static <T extends CalculusFieldElement<T>> T impedance(Tone<T> tone, T narrow, T wide) {
		T mass = Series.at(narrow.divide(wide), 0.26164, -0.353, 0, 0.0809, 0.03816, -0.12386, 0.09616);
		return tone.s().multiply(tone.air().density()).multiply(mass).divide(narrow);
	}
}
