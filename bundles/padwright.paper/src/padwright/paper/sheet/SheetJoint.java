package padwright.paper.sheet;

import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;

/**
 * A joint of a layout.
 *
 * @param name as people see it
 * @param length of its bore; empty if not said
 * @param width of its bore at its lower end, by which its surface is unrolled; empty if not said
 * @param bore where its diameter is said, from the upper end down; empty for a cylinder
 * @param embouchure the hole that is blown across, where its place is said
 */
public record SheetJoint(String name, Optional<Length> length, Optional<Length> width, List<SheetBore> bore,
		Optional<SheetEmbouchure> embouchure) {

	/** The bore of a flute, where none is said (common practice, no source). */
	private static final Length USUAL_BORE = Length.millimetres("19");

	public SheetJoint {
		bore = List.copyOf(bore);
	}

	/** Millimetres across the bore at a place, between the diameters that are said. */
	double across(Length place) {
		if (bore.isEmpty()) {
			return Millimetres.value(width.orElse(USUAL_BORE));
		}
		int below = (int) bore.stream().takeWhile(point -> point.position().compareTo(place) < 0).count();
		SheetBore lower = bore.get(Math.min(below, bore.size() - 1));
		SheetBore upper = bore.get(Math.max(0, below - 1));
		double apart = Millimetres.value(lower.position()) - Millimetres.value(upper.position());
		double share = apart <= 0 ? 0
				: Math.min(1, (Millimetres.value(place) - Millimetres.value(upper.position())) / apart);
		return Millimetres.value(upper.diameter())
				+ share * (Millimetres.value(lower.diameter()) - Millimetres.value(upper.diameter()));
	}
}
