package padwright.engine.acoustics;

/**
 * One size of an instrument, that pitches depend on.
 *
 * @param part of which part
 * @param name of the hole; the number of the bore point, from 1; empty for the mouth hole
 * @param measure what is measured of it
 */
public record Dimension(Part part, String name, Measure measure) {

	/** Parts of an instrument that have sizes. */
	public enum Part {
		BORE, MOUTH, HOLE
	}
}
