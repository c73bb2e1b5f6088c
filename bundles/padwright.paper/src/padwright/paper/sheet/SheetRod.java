package padwright.paper.sheet;

import padwright.engine.length.Length;

/**
 * A rod of a layout.
 *
 * @param joint it is on
 * @param from its upper post, from the upper end of the joint
 * @param to its lower post
 * @param around degrees around the tube, clockwise seen from the upper end, 0 on top
 */
public record SheetRod(String joint, Length from, Length to, double around) {
}
