package padwright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/**
 * What is worked out carries phrases; words are made of them where they are shown. So a result is the same in every language
 * and unit, whichever thread made it.
 */
class WordsAtTheEdgeTest {

	// Tests run in the folder of their own bundle.
	private static final Path WORKUP = Path.of("").toAbsolutePath().getParent()
			.resolve(Path.of("padwright.workup", "src", "padwright", "workup"));
	private static final Pattern WORDS = Pattern.compile("\\bMessages\\.of\\(|\\.words\\(\\)");

	/** What is asked for just when it is shown: reports, comparisons, the lines of a diary, cautions; and words themselves. */
	private static final Set<String> PACKAGES = Set.of("words", "report", "compare", "job", "cautions");
	/** A class that makes words of what it is given says so by its name. */
	private static final String MAKER = "Words.java";
	/**
	 * Phrases put together as they are shown (findings and exceptions), what is written into a text (a stock of learned
	 * figures), and what goes into records of the engine, which knows no phrases (lines of a quote, names of layers).
	 */
	private static final Set<String> OTHERS = Set.of("checks/Advice.java", "diagnosis/UnknownNoteException.java",
			"extensions/LeftOut.java", "learn/LearnedStock.java", "parts/PlanQuote.java", "drift/CupLayers.java");

	@Test
	void resultsCarryPhrases() throws IOException {
		Set<String> makers = new TreeSet<>();
		for (Path file : sources()) {
			if (WORDS.matcher(Files.readString(file)).find()) {
				makers.add(WORKUP.relativize(file).toString());
			}
		}
		assertTrue(makers.containsAll(OTHERS), "named here without need, of " + makers);
		makers.removeIf(file -> PACKAGES.contains(file.split("/")[0]) || file.endsWith(MAKER) || OTHERS.contains(file));
		assertEquals(Set.of(), makers, "let these carry a Phrase");
	}

	private static List<Path> sources() throws IOException {
		try (Stream<Path> all = Files.walk(WORKUP)) {
			return all.filter(file -> file.toString().endsWith(".java")).toList();
		}
	}
}
