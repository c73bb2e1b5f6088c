package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.hipparchus.analysis.differentiation.Gradient;

/**
 * The bore between its points.
 *
 * @param places of the points
 * @param radii at them
 */
record BoreShape(List<Gradient> places, List<Gradient> radii) {

	static BoreShape of(Layout layout, Variables variables) {
		IntStream points = IntStream.range(0, layout.bore().size());
		List<Gradient> places = points.mapToObj(point -> variables.ofBore(layout, point, Measure.PLACE)).toList();
		return new BoreShape(places, IntStream.range(0, places.size())
				.mapToObj(point -> variables.ofBore(layout, point, Measure.DIAMETER).multiply(0.5)).toList());
	}

	Gradient start() {
		return places.get(0);
	}

	Gradient end() {
		return places.get(places.size() - 1);
	}

	/** At a step, that of the upper side. */
	Gradient radiusAt(Gradient place) {
		int point = 0;
		while (places.get(point + 1).getValue() < place.getValue()) {
			point++;
		}
		return radius(point, place);
	}

	/** On the straight line from this point to the next. */
	private Gradient radius(int point, Gradient place) {
		Gradient share = place.subtract(places.get(point)).divide(places.get(point + 1).subtract(places.get(point)));
		return radii.get(point + 1).subtract(radii.get(point)).multiply(share).add(radii.get(point));
	}

	/** The bore from one place down to another, with a step that lies at the first. */
	List<Part> between(Gradient from, Gradient to) {
		List<Part> parts = new ArrayList<>();
		for (int point = 0; point + 1 < places.size(); point++) {
			Gradient start = later(from, places.get(point));
			Gradient end = later(places.get(point + 1), to) == to ? places.get(point + 1) : to;
			if (end.getValue() > start.getValue()) {
				addStep(point, start, parts);
				addTaper(end.subtract(start), radius(point, start), radius(point, end), parts);
			}
		}
		return parts;
	}

	private static Gradient later(Gradient one, Gradient other) {
		return one.getValue() >= other.getValue() ? one : other;
	}

	private void addStep(int point, Gradient start, List<Part> parts) {
		boolean atPoint = start.getValue() == places.get(point).getValue();
		if (atPoint && point > 0 && places.get(point - 1).getValue() == start.getValue()) {
			parts.add(Part.step(radii.get(point - 1), radii.get(point)));
		}
	}

	private static void addTaper(Gradient length, Gradient near, Gradient far, List<Part> parts) {
		int pieces = Cone.pieces(near.getValue(), far.getValue());
		Gradient piece = length.divide(pieces);
		Gradient growth = far.subtract(near).divide(pieces);
		for (int index = 0; index < pieces; index++) {
			parts.add(Part.cone(piece, growth.multiply(index).add(near), growth.multiply(index + 1).add(near)));
		}
	}
}
