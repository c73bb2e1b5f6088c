package padwright.drawing.clock;

import padwright.engine.film.PartialShim;
import padwright.engine.length.LengthUnit;

/** Words of a dial for tests, with 12 at the hinge. */
final class PlainWords implements DialWords.Meanings {

	static final DialWords HINGE = new DialWords("12 = hinge", "seen from pad side", new PlainWords());

	@Override
	public String reading(RimReading reading) {
		return reading.drags() ? "drags at " + reading.at() : reading.text() + " at " + reading.at();
	}

	@Override
	public String thickness(PartialShim piece) {
		return piece.thickness().in(LengthUnit.THOU, 2).toPlainString();
	}

	@Override
	public String piece(PartialShim piece, boolean earlier) {
		return piece + (earlier ? " in the cup" : "");
	}
}
