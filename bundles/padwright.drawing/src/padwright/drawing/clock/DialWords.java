package padwright.drawing.clock;

import padwright.engine.film.PartialShim;

/**
 * The words above and below a dial, and of what is drawn around it. Every drawing says how its clock is to be read.
 *
 * @param above what 12 o'clock looks at, and the hour at the top if it is another
 * @param below from which side the pad is seen
 * @param meanings of marks and pieces, for whoever points at them or cannot see them
 */
public record DialWords(String above, String below, Meanings meanings) {

	/** What marks and pieces mean. */
	public interface Meanings {

		/** What was read, and at which hour. */
		String reading(RimReading reading);

		/** The figure on a piece. */
		String thickness(PartialShim piece);

		/** @param earlier whether the piece is in the cup already */
		String piece(PartialShim piece, boolean earlier);
	}
}
