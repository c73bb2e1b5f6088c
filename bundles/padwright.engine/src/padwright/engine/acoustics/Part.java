package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.complex.Complex;

/** An element of an instrument with what its sizes follow from. Immutable. */
final class Part {

	private final Element element;
	private final List<Gradient> sizes;
	private final List<Complex> plain;

	/** @param sizes in the order of the element's, equal to them */
	Part(Element element, List<Gradient> sizes) {
		this.element = element;
		this.sizes = List.copyOf(sizes);
		plain = Element.complex(element.sizes());
	}

	static Part cone(Gradient length, Gradient near, Gradient far) {
		return new Part(new Cone(length.getValue(), near.getValue(), far.getValue()),
				List.of(length, near, far, Cone.mean(near, far)));
	}

	static Part step(Gradient near, Gradient far) {
		return new Part(new Step(near.getValue(), far.getValue()), List.of(near, far));
	}

	/** The same seen from its other side. */
	Part turned() {
		return element instanceof Step ? step(sizes.get(1), sizes.get(0))
				: cone(sizes.get(0), sizes.get(2), sizes.get(1));
	}

	Element element() {
		return element;
	}

	List<Gradient> sizes() {
		return sizes;
	}

	TwoPort<Complex> twoPort(Tone<Complex> tone) {
		return element.twoPort(tone, plain);
	}
}
