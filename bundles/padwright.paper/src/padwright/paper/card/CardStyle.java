package padwright.paper.card;

import padwright.engine.length.Length;
import padwright.paper.page.Typesetter;

/**
 * Sizes in mm of what is on a card, and what all its clocks share.
 *
 * @param typesetter fits its text
 * @param cellWidth of the cell of one key
 * @param scale 1 for the usual size, less for a denser card
 * @param twelveLooksAt what 12 o'clock looks at
 */
record CardStyle(Typesetter typesetter, double cellWidth, double scale, String twelveLooksAt) {

	/** The gap that fills the band of a clock: the same on all cards, so that any two clocks can be compared. */
	static final Length FULL_GAP = Length.thou("2");

	double clock() {
		return 34 * scale;
	}

	double padding() {
		return 1.6 * scale;
	}

	/** The label of a key. */
	double label() {
		return 6.6 * scale;
	}

	/** Thicknesses: what the eye looks for. */
	double figure() {
		return 4 * scale;
	}

	double text() {
		return 3.2 * scale;
	}

	double small() {
		return 2.75 * scale;
	}

	/** A box to tick. */
	double tick() {
		return 4.4 * scale;
	}

	/** Where figures begin, right of their word. */
	double tab() {
		return 15.5 * scale;
	}
}
