package padwright.architecture;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Which of our bundles each layer may know. A bundle that is not listed has no place yet. */
final class Layers {

	private static final List<String> WORKUP = List.of("padwright.engine", "padwright.model");
	private static final List<String> ABOVE_WORKUP = and(WORKUP, "padwright.workup");
	private static final List<String> IDE = and(ABOVE_WORKUP, "padwright.language");
	private static final List<String> PAPER = and(ABOVE_WORKUP, "padwright.drawing");
	private static final List<String> VIEWS = and(PAPER, "padwright.language", "padwright.paper");
	private static final List<String> COMMANDS = and(PAPER, "padwright.language", "padwright.language.ide",
			"padwright.exchange", "padwright.paper");

	/** The only bundles that may know a window. */
	static final String WORKBENCH = "padwright.workbench";
	/** Knows how to draw in a window, but not what a workbench is. */
	static final String VIEWS_BUNDLE = "padwright.views";

	/** Fragments with nothing but words for the bundle of the platform that they belong to. */
	static final String WORDS_OF_THE_PLATFORM = "padwright.words.";

	static final Map<String, List<String>> MAY_KNOW = new TreeMap<>(Map.ofEntries(
			Map.entry("padwright.engine", List.of()),
			Map.entry("padwright.logging", List.of()),
			Map.entry("padwright.guide", List.of()),
			Map.entry(WORDS_OF_THE_PLATFORM + "ide", List.of()),
			Map.entry(WORDS_OF_THE_PLATFORM + "jface", List.of()),
			Map.entry(WORDS_OF_THE_PLATFORM + "text", List.of()),
			Map.entry(WORDS_OF_THE_PLATFORM + "texteditor", List.of()),
			Map.entry(WORDS_OF_THE_PLATFORM + "views", List.of()),
			Map.entry(WORDS_OF_THE_PLATFORM + "workbench", List.of()),
			Map.entry("padwright.model", List.of("padwright.engine")),
			Map.entry("padwright.workup", WORKUP),
			Map.entry("padwright.language", ABOVE_WORKUP),
			Map.entry("padwright.language.ide", IDE),
			Map.entry("padwright.exchange", IDE),
			Map.entry("padwright.drawing", ABOVE_WORKUP),
			Map.entry("padwright.paper", PAPER),
			Map.entry("padwright.commands", COMMANDS),
			Map.entry(VIEWS_BUNDLE, VIEWS),
			Map.entry(WORKBENCH, and(COMMANDS, "padwright.commands", VIEWS_BUNDLE))));

	private Layers() {
	}

	private static List<String> and(List<String> some, String... more) {
		return Stream.concat(some.stream(), Arrays.stream(more)).toList();
	}
}
