package padwright.paper.film;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/**
 * The ring that partial shims behind a pad are cut from, mm. Its outer edge is the pad's. How far it reaches inward is
 * an assumption of ours (no source): 3.5 mm, which goes past the rim of usual holes, but never more than 0.6 of the
 * radius, so that a hole is left in the middle of small discs.
 */
record RingSize(double inner, double outer) {

	static final double WIDTH = 3.5;
	static final double MOST_OF_RADIUS = 0.6;

	static RingSize ofPad(Length diameter) {
		double outer = diameter.nanometres() / (double) LengthUnit.MILLIMETRE.nanometres() / 2;
		return new RingSize(outer - Math.min(WIDTH, MOST_OF_RADIUS * outer), outer);
	}

	/** Of a piece cut from it, mm². */
	double area(PartialShim piece) {
		return Math.PI * (outer * outer - inner * inner) * piece.arc().halfHours() / 24;
	}

	/** Of the whole disc, mm². */
	double discArea() {
		return Math.PI * outer * outer;
	}
}
