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

	private final Assembly assembly;
	private final Tone<Complex> tone;
	private final List<TwoPort<Complex>> sections = new ArrayList<>();
	private final List<Map<Cover, TwoPort<Complex>>> holes = new ArrayList<>();
	private final Optional<TwoPort<Complex>> outside;
	private final Flow<Complex> end;

	Column(Assembly assembly, AirConstants air, double hertz) {
		this.assembly = assembly;
		tone = Tone.of(hertz, air);
		assembly.sections().forEach(section -> sections.add(joined(section)));
		assembly.spots().forEach(spot -> holes.add(new HashMap<>()));
		outside = assembly.outside().map(part -> part.twoPort(tone));
		end = assembly.end().tail().flow(tone);
	}

	/** Seen from the rim of the embouchure hole into the instrument, or from its upper end. */
	Complex impedance(Fingering fingering) {
		return flow(fingering).impedance();
	}

	/** With the air outside the embouchure hole. */
	Complex sounding(Fingering fingering) {
		Flow<Complex> flow = flow(fingering);
		return outside.map(matrix -> matrix.before(flow)).orElse(flow).impedance();
	}

	private Flow<Complex> flow(Fingering fingering) {
		int last = holes.size();
		Flow<Complex> flow = sections.get(last).before(end);
		for (int index = last - 1; index >= 0; index--) {
			flow = sections.get(index).before(hole(index, fingering).before(flow));
		}
		return flow;
	}

	private TwoPort<Complex> hole(int index, Fingering fingering) {
		return holes.get(index).computeIfAbsent(fingering.over(assembly.spots().get(index).hole().name()),
				cover -> assembly.holePart(index, cover).twoPort(tone));
	}

	private TwoPort<Complex> joined(List<Part> parts) {
		TwoPort<Complex> joined = TwoPort.series(Complex.ZERO);
		for (Part part : parts) {
			joined = joined.then(part.twoPort(tone));
		}
		return joined;
	}
}
