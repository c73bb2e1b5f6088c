package padwright.paper.sheet;

import java.util.Optional;

import padwright.engine.length.Length;

/**
 * A key of a layout.
 *
 * @param name in its system
 * @param label as the trade calls it
 * @param closedAtRest how it stands when no finger is on it
 * @param touch the touches that press it, as in {@code R1}; empty for none
 * @param hole diameter of the tone hole
 * @param rim width of the hole's rim
 * @param chimney how high the rim stands off the bore
 * @param undercut how much wider the hole is at the bore, in diameter
 * @param make how the hole was made; empty if not said
 * @param cup inside diameter
 * @param depth of the cup
 * @param perforated whether the cup has an opening that the finger closes
 * @param opening diameter of that opening; empty if not said
 * @param held how the pad is held in the cup, in words; empty if not said
 * @param hinge the side it turns on, in words; empty if not said
 * @param isHingeFar whether that is the far side
 * @param arm from the middle of the cup to the axis it turns on
 * @param rise how far its pad stands above the hole when it is open
 * @param spring at which weight its spring gives way, in words; empty if not said
 * @param whole what it is one piece with; empty for a key of its own
 * @param joint it sits on
 * @param position of the hole's centre from the upper end of the joint
 * @param around degrees around the tube, clockwise seen from the upper end, 0 on top
 */
public record SheetKey(String name, String label, boolean closedAtRest, String touch, Optional<Length> hole,
		Optional<Length> rim, Optional<Length> chimney, Optional<Length> undercut, String make, Optional<Length> cup,
		Optional<Length> depth, boolean perforated, Optional<Length> opening, String held, String hinge, boolean isHingeFar,
		Optional<Length> arm, Optional<Length> rise, String spring, String whole, String joint, Optional<Length> position,
		double around) {

	/** Whether it hinges on the side away from the player's fingers, and nothing tells how far around the tube it lies. */
	boolean isFar() {
		return isHingeFar && around == 0;
	}

	/** Whether it has no pad. */
	boolean isLever() {
		return hole.isEmpty() && cup.isEmpty();
	}
}
