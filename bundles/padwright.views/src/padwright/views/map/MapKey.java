package padwright.views.map;

import java.util.Optional;

/**
 * A key as the map shows it; lengths in mm.
 *
 * @param name in its system
 * @param label as the trade calls it
 * @param joint it sits on
 * @param position of its hole from the upper end of the joint, if known
 * @param cup inside diameter; of the hole, or a small one, where it is not known
 * @param hole diameter, if known
 * @param hinge on which side it hinges, if known
 * @param around degrees around the tube, clockwise seen from the upper end, 0 on top
 * @param closed whether it is closed at rest
 * @param touch the finger that works it; empty for none
 * @param detail what there is to say about it, in lines
 */
public record MapKey(String name, String label, String joint, Optional<Double> position, double cup,
		Optional<Double> hole, Optional<Side> hinge, double around, boolean closed, String touch, KeyState state, String detail) {

	/** The sides of the tube, seen by the player. */
	public enum Side {
		NEAR, FAR
	}

	/** Whether it hinges on the far side, and nothing tells how far around the tube it lies. */
	public boolean isFar() {
		return hinge.equals(Optional.of(Side.FAR)) && around == 0;
	}
}
