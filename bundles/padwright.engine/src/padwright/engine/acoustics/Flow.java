package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;

/**
 * Sound pressure and volume flow at one place, up to a common factor; their quotient is the impedance there.
 */
record Flow<T extends CalculusFieldElement<T>>(T pressure, T flow) {

	/** Where there is this impedance. */
	static <T extends CalculusFieldElement<T>> Flow<T> ofImpedance(T impedance) {
		return new Flow<>(impedance, impedance.newInstance(1));
	}

	/** Where there is this admittance, 0 for a closed end. */
	static <T extends CalculusFieldElement<T>> Flow<T> ofAdmittance(T admittance) {
		return new Flow<>(admittance.newInstance(1), admittance);
	}

	T impedance() {
		return pressure.divide(flow);
	}

	T admittance() {
		return flow.divide(pressure);
	}
}
