package padwright.engine.coupling;

import padwright.engine.length.Length;

/** What the technician does at an adjuster. */
public sealed interface Adjustment permits ScrewTurn, FilmChange {

	/** How far the adjuster shall move the driven key, signed: positive closes it earlier. */
	Length travel();
}
