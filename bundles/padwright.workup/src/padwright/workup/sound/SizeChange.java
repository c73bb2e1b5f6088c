package padwright.workup.sound;

import padwright.engine.length.Length;
import padwright.model.systems.Merged;

/**
 * A size of a system that a fit changes.
 *
 * @param part the joint, hole or key that says it
 * @param size which one
 * @param by how much it grows; never 0
 */
public record SizeChange(Merged<?, ?> part, Size size, Length by) {

	/** The sizes that a fit may change. */
	public enum Size {
		/** Of a hole, along its joint. */
		PLACE,
		/** Of a hole, inside. */
		DIAMETER,
		/** Of the joint with the open end. */
		LENGTH,
		/** Of the last place at which the bore of that joint is measured. */
		BORE_END
	}
}
