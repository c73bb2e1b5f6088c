package padwright.workup.words;

import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.length.Length;

/** Lengths among the values of a {@link Phrase}, as in {@code 0.5 thou, 1 thou}. */
public record Listed(List<Length> lengths) {

	public Listed {
		lengths = List.copyOf(lengths);
	}

	/** As {@link LengthWords#exact} writes each, now. */
	@Override
	public String toString() {
		return lengths.stream().map(LengthWords::exact).collect(Collectors.joining(", "));
	}
}
