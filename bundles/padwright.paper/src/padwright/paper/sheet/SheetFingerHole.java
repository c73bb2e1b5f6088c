package padwright.paper.sheet;

import java.util.Optional;

import padwright.engine.length.Length;

/**
 * A hole of a layout that no key is written with.
 *
 * @param name in its system
 * @param label as the trade calls it
 * @param touch the touches that cover it; empty for none
 * @param joint it is on
 * @param position of its middle from the upper end of the joint
 * @param around degrees around the tube, clockwise seen from the upper end, 0 on top
 * @param diameter inside; empty if not said
 * @param rim width of its rim; empty if not said
 * @param chimney how high the rim stands off the bore; empty if not said
 * @param undercut how much wider it is at the bore, in diameter; empty if not said
 */
public record SheetFingerHole(String name, String label, String touch, String joint, Length position, double around,
		Optional<Length> diameter, Optional<Length> rim, Optional<Length> chimney, Optional<Length> undercut) {

	/** Its name in its system and what the trade calls it. */
	String title() {
		return label.equals(name) ? label : name + " " + label;
	}
}
