package padwright.views.map;

import java.util.List;

/**
 * A joint as the map shows it; lengths in mm.
 *
 * @param name in its system
 * @param bore across it, by which angles around the tube are unrolled
 */
public record MapJoint(String name, double bore, List<Rod> rods) {

	/**
	 * A rod between its posts.
	 *
	 * @param from its upper post, from the upper end of the joint
	 * @param to its lower post
	 * @param around degrees around the tube, clockwise seen from the upper end, 0 on top
	 */
	public record Rod(double from, double to, double around) {
	}

	/** The bore of a flute (common practice, no source), where none is said. */
	private static final double USUAL_BORE = 19;

	public MapJoint {
		rods = List.copyOf(rods);
	}

	/** A joint of which nothing is known. */
	static MapJoint unknown(String name) {
		return new MapJoint(name, USUAL_BORE, List.of());
	}

	/** How far from the line on top an angle lies when the tube is unrolled; the side beyond half a turn is negative. */
	double across(double around) {
		return bore * Math.PI * Math.IEEEremainder(around, 360) / 360;
	}
}
