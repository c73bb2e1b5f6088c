package padwright.views.hole;

import padwright.engine.length.Length;
import padwright.views.layout.LayoutOrigin;

/**
 * A size of a section.
 *
 * @param isKnown whether the system says it; else it is drawn as usual
 * @param isEditable whether one figure says it, so that it can be dragged
 * @param origin of the thing that has it
 */
public record HoleMeasure(Length length, boolean isKnown, boolean isEditable, LayoutOrigin origin) {

	HoleMeasure as(Length other) {
		return new HoleMeasure(other, true, isEditable, origin);
	}
}
