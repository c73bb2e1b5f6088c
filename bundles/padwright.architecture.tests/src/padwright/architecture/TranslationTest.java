package padwright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** All that is said is said in every language, and what is translated is said somewhere. */
class TranslationTest {

	// Tests run in the folder of their own bundle.
	private static final Path BUNDLES = Path.of("").toAbsolutePath().getParent();
	private static final Pattern LITERAL = Pattern.compile("\"([A-Za-z][\\w.-]*)\"");
	/** A key is written where the text is asked for, whole or up to a point behind which it goes on. */
	private static final Pattern TEXT = Pattern.compile("\\b(?:Messages|Phrase)\\.(?:of|get|find)\\(\\s*\"([^\"]+)\"");
	private static final Pattern ADVICE = Pattern.compile("\\bAdvice\\.of\\(\\s*\"([^\"]+)\"");
	private static final Pattern ADVICE_BY_CODE = Pattern.compile("\\bAdvice\\.of\\(\\s*IssueCodes\\.([A-Z_]+)");
	private static final Pattern CODE = Pattern.compile("String ([A-Z_]+) = \"([^\"]+)\"");
	private static final Pattern IMPORTED = Pattern.compile("import (padwright[\\w.]*)\\.(?:Messages|Phrase);");
	private static final Path FINDINGS = Path.of("padwright", "workup", "words");
	private static final Path CODES = Path.of("padwright.workup", "src", "padwright", "workup", "checks",
			"IssueCodes.java");

	/** A file of Java, by its path from the folder of all bundles. */
	private record Source(Path file, String text) {

		/** Where the texts lie that it asks for: beside the class {@code Messages} or {@code Phrase} that it imports, or its own. */
		Path words() {
			Matcher imported = IMPORTED.matcher(text);
			return imported.find() ? Path.of(imported.group(1).replace('.', '/')) : WordFile.inside(file).getParent();
		}

		Set<String> found(Pattern pattern) {
			return pattern.matcher(text).results().map(found -> found.group(1))
					.collect(Collectors.toCollection(TreeSet::new));
		}
	}

	static List<WordFile> files() throws IOException {
		return WordFile.allIn(BUNDLES);
	}

	static List<WordFile> messages() throws IOException {
		return files().stream().filter(file -> file.isNamed("messages")).toList();
	}

	@Test
	void theWordsAreFound() throws IOException {
		assertTrue(messages().stream().map(file -> file.bundle().toString()).toList().containsAll(List.of(
				"padwright.workup", "padwright.language", "padwright.language.ide", "padwright.views",
				"padwright.workbench")));
	}

	@ParameterizedTest
	@MethodSource("files")
	void germanSaysTheSameWithTheSameArguments(WordFile file) throws IOException {
		Properties english = file.words(BUNDLES, "");
		Properties german = file.words(BUNDLES, "de");
		assertEquals(new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(german.stringPropertyNames()));
		for (String key : english.stringPropertyNames()) {
			assertEquals(WordFile.places(english.getProperty(key)), WordFile.places(german.getProperty(key)), key);
			assertFalse(german.getProperty(key).isBlank(), key);
			assertFalse(german.getProperty(key).contains("\uFFFD"), key);
		}
	}

	@ParameterizedTest
	@MethodSource("messages")
	void everyTextThatIsAskedForIsThere(WordFile file) throws IOException {
		Set<String> known = file.words(BUNDLES, "").stringPropertyNames();
		Set<String> asked = asked(WordFile.inside(file.file()).getParent());
		assertFalse(asked.isEmpty());
		assertEquals(List.of(), asked.stream().filter(key -> !known.contains(key)
				&& !(key.endsWith(".") && known.stream().anyMatch(each -> each.startsWith(key)))).toList());
	}

	/** The keys asked for in the file of a folder, three for a finding. */
	private static Set<String> asked(Path folder) throws IOException {
		Set<String> asked = new TreeSet<>();
		for (Source source : sources()) {
			if (source.words().equals(folder)) {
				asked.addAll(source.found(TEXT));
			}
			if (folder.equals(FINDINGS)) {
				advice(source).forEach(key -> asked.addAll(List.of(key + ".what", key + ".why", key + ".cure")));
			}
		}
		return asked;
	}

	private static Set<String> advice(Source source) throws IOException {
		Set<String> keys = source.found(ADVICE);
		Set<String> codes = source.found(ADVICE_BY_CODE);
		CODE.matcher(Files.readString(BUNDLES.resolve(CODES))).results().filter(code -> codes.contains(code.group(1)))
				.forEach(code -> keys.add(code.group(2)));
		return keys;
	}

	@ParameterizedTest
	@MethodSource("messages")
	void everyTextIsAskedFor(WordFile file) throws IOException {
		Set<String> literals = sources().stream().filter(source -> source.file().startsWith(file.bundle()))
				.flatMap(source -> source.found(LITERAL).stream()).collect(Collectors.toSet());
		assertEquals(List.of(), file.words(BUNDLES, "").stringPropertyNames().stream()
				.filter(key -> literals.stream().noneMatch(literal -> isPart(literal, key))).sorted().toList());
	}

	/** What a text says must not hang on the thread that makes it: results go from one to another. */
	@Test
	void nothingIsKeptForAThreadAlone() throws IOException {
		assertEquals(List.of(), sources().stream().filter(source -> source.text().contains("ThreadLocal"))
				.map(source -> source.file().toString()).toList());
	}

	private static boolean isPart(String literal, String key) {
		return key.equals(literal) || key.startsWith(literal.endsWith(".") ? literal : literal + ".");
	}

	private static List<Source> sources() throws IOException {
		try (Stream<Path> files = Files.find(BUNDLES, Integer.MAX_VALUE,
				(file, attributes) -> file.toString().endsWith(".java")
						&& WordFile.isSource(BUNDLES.relativize(file)))) {
			return files.map(TranslationTest::read).toList();
		}
	}

	private static Source read(Path file) {
		try {
			return new Source(BUNDLES.relativize(file), Files.readString(file));
		} catch (IOException unreadable) {
			throw new IllegalStateException(file + " cannot be read", unreadable);
		}
	}
}
