package padwright.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Of one thing nobody says that there are "1 keys": what is counted stands in a choice, or there are always several. */
class PluralTest {

	private static final Path BUNDLES = Path.of("").toAbsolutePath().getParent();
	private static final Pattern COUNTED = Pattern.compile("\\{\\d+\\} (?:[\\p{L}-]{4,} )?(?:"
			+ "answers|cards|days|discs|documents|files|findings|fingerings|grams|groups|holes|hours|instruments|keys|looks|minutes|"
			+ "notes|pads|pages|pieces|places|plans|players|readings|remarks|rounds|rows|semitones|services|shims|springs|times|"
			+ "touches|years|"
			+ "Antworten|Bestände|Dateien|Federn|Gramm|Griffe|Gruppen|Halbtöne|Halbtönen|Hinweise|Instrumente|Instrumenten|Jahre|Jahren|"
			+ "Karten|Klappen|Löcher|Messwerte|Minuten|Pläne|Plänen|Runden|Scheiben|Seiten|Stellen|Stücke|Stunden|Tage|Tagen|Töne|"
			+ "Tönen|Überholungen|Zeilen)\\b", Pattern.UNICODE_CHARACTER_CLASS);
	private static final Pattern CHOICE = Pattern.compile("\\{\\d+,choice,(?:[^{}]|\\{\\d+\\})*\\}");
	/** Never of one: what is wrong with one is said by another key, or it takes several to be said at all. */
	private static final Set<String> ALWAYS_SEVERAL = Set.of("hours-alias.what", "hint.alias", "key.ratio", "too-many-pieces.what",
			"spring-weight.what", "spring-weight.why", "work.spring", "work.film.times", "report.drift.cups", "report.history.trend",
			"report.solve.stiffness", "adjust.clock", "table.hours", "folder.large");

	static List<WordFile> files() throws IOException {
		return WordFile.allIn(BUNDLES);
	}

	@ParameterizedTest
	@MethodSource("files")
	void whatIsCountedIsSaidOfOneToo(WordFile file) throws IOException {
		assertEquals(List.of(), withoutOne(file.words(BUNDLES, "")));
		assertEquals(List.of(), withoutOne(file.words(BUNDLES, "de")));
	}

	@Test
	void aPluralBehindAFigureIsFound() {
		Properties words = new Properties();
		words.setProperty("plain", "{0} keys");
		words.setProperty("described", "an {1} schönen Stellen");
		words.setProperty("chosen", "{0} {0,choice,0#keys|1#key|1<keys}");
		words.setProperty("pads.more", "{0} pads");
		assertEquals(List.of("described", "plain"), withoutOne(words));
	}

	/** A word taken out of a text, or renamed, leaves no gap here. */
	@Test
	void theExceptionsAreThere() throws IOException {
		List<String> keys = files().stream().flatMap(file -> words(file).stringPropertyNames().stream()).toList();
		assertTrue(keys.containsAll(ALWAYS_SEVERAL));
	}

	private static Properties words(WordFile file) {
		try {
			return file.words(BUNDLES, "");
		} catch (IOException unreadable) {
			throw new IllegalStateException(file + " cannot be read", unreadable);
		}
	}

	private static List<String> withoutOne(Properties words) {
		return words.stringPropertyNames().stream().filter(key -> !key.endsWith(".more") && !ALWAYS_SEVERAL.contains(key)
				&& COUNTED.matcher(CHOICE.matcher(words.getProperty(key)).replaceAll("")).find()).sorted().toList();
	}
}
