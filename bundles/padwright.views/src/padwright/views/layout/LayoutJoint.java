package padwright.views.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.keysystem.Joint;
import padwright.model.systems.EffectiveJoint;
import padwright.views.Figures;

/**
 * A joint in its place along the instrument.
 *
 * @param joint nothing where the system has none
 * @param start its upper end from that of the instrument
 * @param bore from its upper end down
 */
public record LayoutJoint(Optional<Joint> joint, String label, Length start, Length length, List<Width> bore) {

	/** Inside width of the tube at a place of the instrument, mm. */
	public record Width(double along, double diameter) {
	}

	/** The bore of a flute, where none is said (common practice, no source). */
	static final double USUAL_BORE = 19;

	public LayoutJoint {
		bore = List.copyOf(bore);
	}

	static LayoutJoint of(EffectiveJoint joint, Length start, Length length) {
		double from = Figures.mm(start);
		List<Width> bore = new ArrayList<>();
		joint.bore().forEach(point -> bore.add(new Width(from + point.position().map(Figures::mm).orElse(0.0),
				Figures.mm(point.diameter()))));
		return new LayoutJoint(Optional.of(joint.definition()), joint.label(), start, length, ends(bore, from,
				from + Figures.mm(length)));
	}

	/** With a point at either end, so that it can be drawn through. */
	static List<Width> ends(List<Width> said, double from, double to) {
		List<Width> bore = new ArrayList<>(said);
		double first = said.isEmpty() ? USUAL_BORE : said.get(0).diameter();
		double last = said.isEmpty() ? USUAL_BORE : said.get(said.size() - 1).diameter();
		bore.removeIf(width -> width.along() <= from || width.along() >= to);
		bore.add(0, new Width(from, first));
		bore.add(new Width(to, last));
		return bore;
	}

	public Length end() {
		return start.plus(length);
	}

	/** The inside width at a place of the instrument, mm: between two points as on a straight line. */
	public double widthAt(double along) {
		Width from = bore.get(0);
		for (Width to : bore) {
			if (to.along() >= along && to.along() > from.along()) {
				return from.diameter() + (to.diameter() - from.diameter()) * (along - from.along())
						/ (to.along() - from.along());
			}
			from = to;
		}
		return from.diameter();
	}

	double widest() {
		return bore.stream().mapToDouble(Width::diameter).max().orElse(USUAL_BORE);
	}
}
