package padwright.workup.words;

import padwright.engine.length.Length;

/** As {@link Rough}, behind another in the same unit: without it. */
public record RoughFigure(Length length) {

	/** As {@link LengthWords#rough} writes it, now. */
	@Override
	public String toString() {
		return LengthWords.rough(length);
	}
}
