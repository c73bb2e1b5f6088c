package padwright.workup.words;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Several of a kind among the values of a {@link Phrase}, as in {@code 0.5 thou, 1 thou}.
 *
 * @param values  lengths, phrases, or whatever else a phrase takes
 * @param between what parts them
 */
public record Listed(List<?> values, String between) {

	public Listed {
		values = List.copyOf(values);
	}

	/** Parted by commas. */
	public static Listed of(List<?> values) {
		return new Listed(values, ", ");
	}

	/** As {@link Texts#of} writes each, now. */
	@Override
	public String toString() {
		return values.stream().map(Texts::printed).collect(Collectors.joining(between));
	}
}
