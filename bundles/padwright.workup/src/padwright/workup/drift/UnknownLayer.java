package padwright.workup.drift;

import java.util.List;

import padwright.workup.words.Listed;
import padwright.workup.words.Phrase;

/**
 * Something in a cup whose change is not known, or not wholly.
 *
 * @param layer where it is and what it is made of, as in {@code face felt}
 * @param missing what is not known of it, as in {@code swelling}
 */
public record UnknownLayer(Phrase layer, List<Phrase> missing) {

	public UnknownLayer {
		missing = List.copyOf(missing);
	}

	UnknownLayer(Phrase layer, Phrase missing) {
		this(layer, List.of(missing));
	}

	/** As in {@code face felt (swelling)}, in the language of now. */
	@Override
	public String toString() {
		return layer + " (" + Listed.of(missing) + ")";
	}
}
