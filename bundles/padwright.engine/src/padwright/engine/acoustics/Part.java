package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.analysis.differentiation.Gradient;

/**
 * An element of an instrument with what its sizes follow from.
 *
 * @param sizes in the order of the element's, equal to them
 */
record Part(Element element, List<Gradient> sizes) {

	Part {
		sizes = List.copyOf(sizes);
	}

	static Part cone(Gradient length, Gradient near, Gradient far) {
		return new Part(new Cone(length.getValue(), near.getValue(), far.getValue()), List.of(length, near, far));
	}

	static Part step(Gradient near, Gradient far) {
		return new Part(new Step(near.getValue(), far.getValue()), List.of(near, far));
	}

	/** The same seen from its other side. */
	Part turned() {
		return element instanceof Step ? step(sizes.get(1), sizes.get(0))
				: cone(sizes.get(0), sizes.get(2), sizes.get(1));
	}
}
