package padwright.engine.acoustics;

import java.util.List;
import java.util.stream.DoubleStream;

import org.hipparchus.CalculusFieldElement;

/** A way that leads off the bore and ends, such as the cavity between embouchure hole and cork. */
record Branch(List<Element> elements, Tail tail) implements Element {

	Branch {
		elements = List.copyOf(elements);
	}

	@Override
	public double[] sizes() {
		return DoubleStream.concat(elements.stream().map(Element::sizes).flatMapToDouble(DoubleStream::of),
				DoubleStream.of(tail.sizes())).toArray();
	}

	@Override
	public <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes) {
		int from = sizes.size() - tail.sizes().length;
		Flow<T> flow = tail.flow(tone, sizes.subList(from, sizes.size()));
		for (int index = elements.size() - 1; index >= 0; index--) {
			int to = from;
			from -= elements.get(index).sizes().length;
			flow = elements.get(index).twoPort(tone, sizes.subList(from, to)).before(flow);
		}
		return TwoPort.shunt(flow.admittance());
	}
}
