package padwright.workup.drift;

import java.util.List;

/**
 * Something in a cup whose change is not known, or not wholly.
 *
 * @param layer where it is and what it is made of, as in {@code face felt}
 * @param missing what is not known of it, as in {@code swelling}
 */
public record UnknownLayer(String layer, List<String> missing) {

	public UnknownLayer {
		missing = List.copyOf(missing);
	}

	UnknownLayer(String layer, String missing) {
		this(layer, List.of(missing));
	}

	/** As in {@code face felt (swelling)}. */
	@Override
	public String toString() {
		return layer + " (" + String.join(", ", missing) + ")";
	}
}
