package padwright.workup.words;

import padwright.engine.length.Length;

/** A length that was reckoned, among the values of a {@link Phrase}: written with its unit, no finer than feelers tell. */
public record Rough(Length length) {

	/** As {@link LengthWords#roughWithUnit} writes it, now. */
	@Override
	public String toString() {
		return LengthWords.roughWithUnit(length);
	}
}
