package padwright.views.map;

import java.util.List;

/**
 * A joint as the map shows it; lengths in mm.
 *
 * @param name in its system
 * @param bore across it, by which angles around the tube are unrolled
 * @param holes that fingers cover, of which the places are known
 */
public record MapJoint(String name, double bore, List<Rod> rods, List<FingerHole> holes) {

	/**
	 * A rod between its posts.
	 *
	 * @param from its upper post, from the upper end of the joint
	 * @param to its lower post
	 * @param around degrees around the tube, clockwise seen from the upper end, 0 on top
	 */
	public record Rod(double from, double to, double around) {
	}

	/**
	 * A hole under a finger.
	 *
	 * @param position of its middle, from the upper end of the joint
	 * @param diameter more than 0
	 * @param around degrees around the tube, clockwise seen from the upper end, 0 on top
	 * @param touch the touches that cover it
	 * @param detail what there is to say about it
	 */
	public record FingerHole(double position, double diameter, double around, String touch, String detail) {
	}

	/** The bore of a flute (common practice, no source), where none is said. */
	private static final double USUAL_BORE = 19;

	public MapJoint {
		rods = List.copyOf(rods);
		holes = List.copyOf(holes);
	}

	/** A joint of which nothing is known. */
	static MapJoint unknown(String name) {
		return new MapJoint(name, USUAL_BORE, List.of(), List.of());
	}

	/** How far from the line on top an angle lies when the tube is unrolled; the side beyond half a turn is negative. */
	double across(double around) {
		return bore * Math.PI * Math.IEEEremainder(around, 360) / 360;
	}
}
