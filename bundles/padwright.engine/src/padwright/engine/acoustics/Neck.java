package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.CalculusFieldElement;

/**
 * A hole with the lengths that a model gives it, which are the same at all frequencies.
 *
 * @param radius of the hole in m
 * @param chimney its height, with what a model adds to it
 * @param bore radius of the bore there
 * @param inner length of the mass on the way into it
 * @param along length of what it adds to the bore, below 0
 */
record Neck<T extends CalculusFieldElement<T>>(T radius, T chimney, T bore, T inner, T along) {

	/** How many sizes it has. */
	static final int SIZES = 5;

	static <T extends CalculusFieldElement<T>> Neck<T> of(List<T> sizes) {
		return new Neck<>(sizes.get(0), sizes.get(1), sizes.get(2), sizes.get(3), sizes.get(4));
	}

	static List<Double> values(Neck<?> neck) {
		return neck.sizes().stream().map(CalculusFieldElement::getReal).toList();
	}

	List<T> sizes() {
		return List.of(radius, chimney, bore, inner, along);
	}

	/** Impedance that the hole adds along the bore. */
	T alongBore(Tone<T> tone) {
		return tone.inertance(bore, along);
	}
}
