package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.hipparchus.complex.Complex;

/**
 * An instrument at one frequency, for any number of fingerings: each section of the bore is computed once, and each
 * hole once for each way to cover it.
 */
final class Column {

	private final Assembly assembly;
	private final Tone<Complex> tone;
	private final List<TwoPort<Complex>> sections = new ArrayList<>();
	private final List<Map<Cover, TwoPort<Complex>>> holes = new ArrayList<>();
	private final Flow<Complex> end;

	Column(Assembly assembly, AirConstants air, double hertz) {
		this.assembly = assembly;
		tone = Tone.of(hertz, air);
		assembly.sections().forEach(section -> sections.add(joined(section)));
		assembly.spots().forEach(spot -> holes.add(new HashMap<>()));
		end = assembly.end().tail().flow(tone);
	}

	/** Seen from outside the embouchure hole, the air there with it, or from the upper end. */
	Complex impedance(Fingering fingering) {
		int last = holes.size();
		Flow<Complex> flow = sections.get(last).before(end);
		for (int index = last - 1; index >= 0; index--) {
			flow = sections.get(index).before(hole(index, fingering).before(flow));
		}
		return flow.impedance();
	}

	private TwoPort<Complex> hole(int index, Fingering fingering) {
		return holes.get(index).computeIfAbsent(fingering.over(assembly.spots().get(index).hole().name()),
				cover -> assembly.holePart(index, cover).element().twoPort(tone));
	}

	private TwoPort<Complex> joined(List<Part> parts) {
		TwoPort<Complex> joined = TwoPort.series(Complex.ZERO);
		boolean isFirst = sections.isEmpty();
		if (isFirst && assembly.outside().isPresent()) {
			joined = assembly.outside().get().element().twoPort(tone);
		}
		for (Part part : parts) {
			joined = joined.then(part.element().twoPort(tone));
		}
		return joined;
	}
}
