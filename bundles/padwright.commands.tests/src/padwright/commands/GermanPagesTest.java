package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Papers and reports in German have no English word but those that the shop itself wrote, and commas in their figures. */
class GermanPagesTest {

	private static final List<String> WORDS = List.of("padwright/paper/words/messages", "padwright/workup/words/messages");
	private static final Pattern WORD = Pattern.compile("[\\p{L}]{3,}");
	/** The name of a thread has a point in every language. */
	private static final Pattern THREAD = Pattern.compile("UNM [\\d.]+");
	/** A figure with a point; days have two. */
	private static final Pattern POINT = Pattern.compile("(?<![\\d.])\\d+\\.\\d+(?![\\d.])");

	/** Behind it stand lines of a text in the language of the shop's files. */
	private static final String DIFFERENCE = "--- ";

	private static Set<String> english;

	@TempDir
	private Path folder;

	/** Words of the English texts that no German text has, and no file of the example. */
	@BeforeAll
	static void gatherTheWords() throws IOException {
		english = new TreeSet<>();
		for (String file : WORDS) {
			english.addAll(words(texts(file + ".properties")));
		}
		for (String file : WORDS) {
			english.removeAll(words(texts(file + "_de.properties")));
		}
		try (Stream<Path> files = Files.walk(CommandRun.EXAMPLES)) {
			for (Path file : files.filter(Files::isRegularFile).toList()) {
				english.removeAll(words(Files.readString(file)));
			}
		}
		assertTrue(english.containsAll(List.of("adjuster", "allergic", "borders")), english::toString);
	}

	private static String texts(String path) throws IOException {
		Properties texts = new Properties();
		try (InputStream in = GermanPagesTest.class.getClassLoader().getResourceAsStream(path)) {
			texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
		}
		return texts.values().stream().map(Object::toString).collect(Collectors.joining("\n"));
	}

	private static Set<String> words(String text) {
		return WORD.matcher(text.toLowerCase(Locale.ROOT)).results().map(found -> found.group())
				.collect(Collectors.toCollection(TreeSet::new));
	}

	@ParameterizedTest
	@ValueSource(strings = { "card plans/whole-job.plan", "card plans/first.plan", "film plans/first.plan",
			"handback plans/whole-job.plan", "estimate plans/whole-job.plan", "invoice plans/whole-job.plan",
			"quote plans/first.plan --svg --minutes 90 --rate 60 --tax 19", "sheet systems/boehm.keys#BoehmC",
			"sound systems/alto.keys --svg" })
	void aPaperIsGermanThroughout(String command) throws IOException {
		CommandRun run = run(command + " -o " + folder);
		assertEquals(0, run.status(), run.err());
		assertGerman(PageWords.in(folder));
	}

	@ParameterizedTest
	@ValueSource(strings = { "leak plans/first.plan --notes", "drift plans/whole-job.plan", "money plans/whole-job.plan",
			"money plans", "next plans", "stock plans", "forecast plans", "diagnose plans/first.plan --bad D4",
			"quote plans/first.plan --minutes 90 --rate 60 --tax 19", "search plans E-402", "sound systems/alto.keys --holes",
			"solve plans/first.plan", "solve plans/whole-job.plan", "regulate plans/first.plan", "regulate plans/whole-job.plan",
			"choose plans/whole-job.plan", "notes systems/boehm.keys#BoehmC", "notes systems/clarinet.keys",
			"sound systems/alto.keys --fit", "learn plans", "history plans",
			"compare systems/boehm.keys#BoehmC systems/alto.keys",
			"compare plans/yearly/2023-yearly.plan plans/yearly/2024-yearly.plan" })
	void aReportIsGermanThroughout(String command) {
		String said = run(command).out();
		assertGerman(said.contains(DIFFERENCE) ? said.substring(0, said.indexOf(DIFFERENCE)) : said);
	}

	private static CommandRun run(String command) {
		Stream<String> words = Stream.of(command.split(" "))
				.map(word -> word.contains(".plan") || word.contains(".keys") || word.equals("plans")
						? CommandRun.EXAMPLES.resolve(word).toString() : word);
		return CommandRun.padwright(Stream.concat(words, Stream.of("--language", "de")).toArray());
	}

	private static void assertGerman(String said) {
		assertTrue(said.length() > 100, said);
		Set<String> left = words(said);
		left.retainAll(english);
		assertEquals(Set.of(), left, said);
		assertEquals(List.of(), POINT.matcher(THREAD.matcher(said).replaceAll("")).results().map(found -> found.group()).toList(), said);
	}

	@Test
	void anUnknownLanguageIsRefusedAndAnUntranslatedOneIsEnglish() {
		CommandRun unknown = CommandRun.padwright("money", CommandRun.EXAMPLES.resolve("plans"), "--language", "??");
		assertEquals(2, unknown.status());
		assertTrue(unknown.err().contains("--language ?? is no language; write en or de"), unknown.err());
		assertTrue(CommandRun.padwright("money", CommandRun.EXAMPLES.resolve("plans"), "--language", "da").out()
				.contains("Next number"));
	}
}
