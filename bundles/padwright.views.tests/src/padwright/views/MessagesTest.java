package padwright.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.views.map.KeyState;
import padwright.views.rows.KeyColumn;

class MessagesTest {

	private static final Path SOURCES = Path.of("..", "padwright.views", "src");
	private static final Pattern NAMED = Pattern
			.compile("\"((?:state|map|bench|section|clock|table|regulate|choose)\\.[A-Za-z.]+)\"");

	private static Properties texts(String language) throws IOException {
		Properties texts = new Properties();
		try (InputStream file = Messages.class.getResourceAsStream("messages" + language + ".properties")) {
			texts.load(new InputStreamReader(file, StandardCharsets.UTF_8));
		}
		return texts;
	}

	private static Set<String> places(String text) {
		return Pattern.compile("\\{[0-9]+\\}").matcher(text).results().map(place -> place.group())
				.collect(Collectors.toCollection(TreeSet::new));
	}

	@Test
	void bothLanguagesSayTheSameThings() throws IOException {
		Properties english = texts("");
		Properties german = texts("_de");
		assertEquals(new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(german.stringPropertyNames()));
		for (String key : english.stringPropertyNames()) {
			assertFalse(german.getProperty(key).isBlank(), key);
			assertEquals(places(english.getProperty(key)), places(german.getProperty(key)), key);
		}
	}

	@Test
	void everyTextThatIsNamedIsThere() throws IOException {
		Set<String> known = texts("").stringPropertyNames();
		int named = 0;
		try (Stream<Path> files = Files.walk(SOURCES)) {
			for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
				Matcher names = NAMED.matcher(Files.readString(file));
				while (names.find()) {
					boolean prefix = names.group(1).endsWith(".");
					assertTrue(known.stream().anyMatch(
							key -> prefix ? key.startsWith(names.group(1)) : key.equals(names.group(1))),
							names.group(1));
					named++;
				}
			}
		}
		assertTrue(named > 80, "the sources are read");
		for (KeyState state : KeyState.values()) {
			assertFalse(state.inWords().isEmpty());
		}
		for (KeyColumn column : KeyColumn.values()) {
			assertFalse(column.heading().isEmpty());
		}
	}

	@Test
	void argumentsStandInTheirPlaces() {
		assertEquals("F♯: 0.5 thou", Messages.of("map.key", "F♯", "0.5 thou"));
	}
}
