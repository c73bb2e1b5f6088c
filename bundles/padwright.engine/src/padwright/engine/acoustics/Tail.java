package padwright.engine.acoustics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.complex.Complex;

/**
 * The end of a tube.
 *
 * @param radius of the tube in m, more than 0
 */
record Tail(double radius, Ending ending) {

	/** All that it depends on, in m: its radius first. */
	double[] sizes() {
		return DoubleStream.concat(DoubleStream.of(radius), Arrays.stream(ending.sizes())).toArray();
	}

	/** @param sizes in place of its own and in their order */
	<T extends CalculusFieldElement<T>> Flow<T> flow(Tone<T> tone, List<T> sizes) {
		return ending.flow(tone, sizes.get(0), sizes.subList(1, sizes.size()));
	}

	Flow<Complex> flow(Tone<Complex> tone) {
		return flow(tone, Element.complex(sizes()));
	}
}
