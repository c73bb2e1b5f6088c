package padwright.views.section;

import padwright.engine.length.Length;

/**
 * One layer in a cup.
 *
 * @param kind what it is for
 * @param name in words
 * @param thickness more than 0
 */
public record SectionLayer(Kind kind, String name, Length thickness) {

	/** What lies in a cup, from its floor to the rim. */
	public enum Kind {
		BACKING, SHIM,
		/** Room for full shims that are not noted yet. */
		MISSING_SHIMS, PAD, BASE, FACE, SKIN
	}
}
