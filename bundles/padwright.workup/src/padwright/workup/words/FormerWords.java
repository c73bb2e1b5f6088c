package padwright.workup.words;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Words of earlier versions of the language and of the kinds of pads that ship, and how they are written now. */
public final class FormerWords {

	private static final Map<String, String> NOW = Map.of("extends", "based on", "french", "perforated",
			"stabiliser", "backing", "engineered", "rigid");

	private FormerWords() {
	}

	/** What such a word has become; empty for any other. */
	public static Optional<String> now(String word) {
		return Optional.ofNullable(NOW.get(word));
	}

	/** A name with dots, each of its words as it is written now. */
	static String renewed(String name) {
		return Arrays.stream(name.split("\\.", -1)).map(word -> now(word).orElse(word))
				.collect(Collectors.joining("."));
	}
}
