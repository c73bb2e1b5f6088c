package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;

/**
 * Transmission matrix of a piece of an instrument: pressure p₁ = a p₂ + b u₂ and flow u₁ = c p₂ + d u₂ on its near side
 * from those on its far side. Every passive piece has ad − bc = 1.
 */
record TwoPort<T extends CalculusFieldElement<T>>(T a, T b, T c, T d) {

	/** What is passed on the way: adds to the pressure. */
	static <T extends CalculusFieldElement<T>> TwoPort<T> series(T impedance) {
		T one = impedance.newInstance(1);
		return new TwoPort<>(one, impedance, impedance.newInstance(0), one);
	}

	/** What branches off: takes from the flow. */
	static <T extends CalculusFieldElement<T>> TwoPort<T> shunt(T admittance) {
		T one = admittance.newInstance(1);
		return new TwoPort<>(one, admittance.newInstance(0), admittance, one);
	}

	/** This, then the other behind it. */
	TwoPort<T> then(TwoPort<T> next) {
		return new TwoPort<>(sum(a, next.a, b, next.c), sum(a, next.b, b, next.d), sum(c, next.a, d, next.c),
				sum(c, next.b, d, next.d));
	}

	/** What there is on the near side of this when that is on its far side. */
	Flow<T> before(Flow<T> far) {
		return new Flow<>(sum(a, far.pressure(), b, far.flow()), sum(c, far.pressure(), d, far.flow()));
	}

	private static <T extends CalculusFieldElement<T>> T sum(T one, T other, T third, T fourth) {
		return one.multiply(other).add(third.multiply(fourth));
	}
}
