package padwright.language.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.language.Mark;
import padwright.language.MarkedText;
import padwright.language.TestShop;
import padwright.workup.checks.IssueCodes;

/** Every finding is told in German where the program speaks German, and is the same finding. */
class GermanFindingsTest {

	private static final Pattern EMPTY_PLACE = Pattern.compile("\\{\\d");

	private final Locale before = Locale.getDefault(Locale.Category.DISPLAY);

	@AfterEach
	void putLanguageBack() {
		Locale.setDefault(Locale.Category.DISPLAY, before);
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("padwright.language.validation.FindingsTest#cases")
	void everyFindingIsTranslated(FindingCase about) {
		List<String> english = told(about, Locale.ENGLISH);
		List<String> german = told(about, Locale.GERMAN);
		assertEquals(english.size(), german.size());
		for (int index = 0; index < english.size(); index++) {
			assertNotEquals(english.get(index), german.get(index));
			assertFalse(EMPTY_PLACE.matcher(german.get(index)).find(), german.get(index));
		}
	}

	private static List<String> told(FindingCase about, Locale language) {
		Locale.setDefault(Locale.Category.DISPLAY, language);
		TestShop shop = new TestShop();
		about.documents().forEach((name, marked) -> shop.with(name, MarkedText.withoutMarks(marked)));
		List<String> told = new ArrayList<>();
		about.documents().keySet().forEach(name -> shop.findings(name).stream().map(Mark::code).distinct()
				.forEach(code -> told.addAll(shop.messages(name, code))));
		return told;
	}

	@Test
	void wordsOfTheLanguageStay() {
		Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMAN);
		TestShop shop = TestShop.of("flute.keys", "system Flute { key A open clozes B }").with("alto.keys",
				"system Alto { key C closes Z }");
		assertEquals(List.of("„clozes“ kann hier nicht stehen. "
				+ "Ein System enthält Zeilen pitch, sounds, clock, joint, touch, hole, key, rod, change, remove und note."),
				shop.messages("flute.keys", IssueCodes.SYNTAX));
		assertEquals(List.of("Klappe Z gibt es nicht: es gibt C. Ist C gemeint?"),
				shop.messages("alto.keys", IssueCodes.LINK));
	}
}
