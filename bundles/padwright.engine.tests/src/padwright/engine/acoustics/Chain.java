package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.complex.Complex;

/**
 * Elements put together by hand, one behind the other, and what the last one ends in; of any number.
 *
 * @param elements from where it is looked into
 */
record Chain(List<Element> elements, Tail tail) {

	Chain {
		elements = List.copyOf(elements);
	}

	/** Pressure over flow where it is looked into, in Pa·s/m³. */
	Complex impedance(Tone<Complex> tone) {
		Flow<Complex> flow = tail.flow(tone);
		for (int index = elements.size() - 1; index >= 0; index--) {
			flow = elements.get(index).twoPort(tone).before(flow);
		}
		return flow.impedance();
	}
}
