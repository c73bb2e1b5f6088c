package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;

/**
 * Where a hole meets the bore.
 *
 * @param radius b of the hole in m
 * @param chimney t, height of the hole in m, from the bore at its edge
 * @param bore a, radius of the bore there in m
 * @param matched whether the lens of air between the chimney and the round bore counts
 */
record Junction<T extends CalculusFieldElement<T>>(T radius, T chimney, T bore, boolean matched) {

	/** δ = b / a. */
	T ratio() {
		return radius.divide(bore);
	}

	/** {@code share} times b δ². */
	T scaled(T share) {
		return ratio().multiply(ratio()).multiply(radius).multiply(share);
	}

	/**
	 * Length of the lens of air, (bδ/8)(1 + 0.207 δ³): Nederveen, Jansen and van Hassel, Acustica 84 (1998) 957–966.
	 */
	T matching() {
		T ratio = ratio();
		return matched ? radius.multiply(ratio).multiply(Series.at(ratio, 0.125, 0, 0, 0.125 * 0.207))
				: radius.newInstance(0);
	}
}
