package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.hipparchus.complex.Complex;

/**
 * An instrument at one frequency, for any number of fingerings: each section of the bore is computed once, and each
 * hole once for each way to cover it. Of one thread.
 */
final class Column {

	private final Tone<Complex> tone;
	private final List<TwoPort<Complex>> sections = new ArrayList<>();
	private final Map<Part, TwoPort<Complex>> holes = new HashMap<>();
	private final Optional<TwoPort<Complex>> outside;
	private final Flow<Complex> end;

	Column(Assembly assembly, AirConstants air, double hertz) {
		tone = Tone.of(hertz, air);
		assembly.sections().forEach(section -> sections.add(joined(section)));
		outside = assembly.outside().map(part -> part.twoPort(tone));
		end = assembly.end().tail().flow(tone);
	}

	/**
	 * Seen from the rim of the embouchure hole into the instrument, or from its upper end.
	 *
	 * @param covered the holes, in their order
	 */
	Complex impedance(List<Part> covered) {
		return flow(covered).impedance();
	}

	/** With the air outside the embouchure hole. */
	Complex sounding(List<Part> covered) {
		Flow<Complex> flow = flow(covered);
		return outside.map(matrix -> matrix.before(flow)).orElse(flow).impedance();
	}

	private Flow<Complex> flow(List<Part> covered) {
		int last = covered.size();
		Flow<Complex> flow = sections.get(last).before(end);
		for (int index = last - 1; index >= 0; index--) {
			flow = sections.get(index).before(hole(covered.get(index)).before(flow));
		}
		return flow;
	}

	private TwoPort<Complex> hole(Part hole) {
		return holes.computeIfAbsent(hole, met -> met.twoPort(tone));
	}

	private TwoPort<Complex> joined(List<Part> parts) {
		TwoPort<Complex> joined = TwoPort.series(Complex.ZERO);
		for (Part part : parts) {
			joined = joined.then(part.twoPort(tone));
		}
		return joined;
	}
}
