package padwright.workup.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.workup.checks.Advice;

/** What a result says is put into words where it is shown: the result itself is the same in every language and unit. */
class PhraseTest {

	private final Phrase tooHigh = Phrase.of("stack-height.high", "F", Length.thou("15"), new Rough(Length.thou("1.5")));

	@Test
	void oneResultIsToldInEachLanguageAndUnit() {
		assertEquals("The full shims of F sum to 15 thou, 1.5 thou too high", Spoken.in(Locale.ENGLISH, tooHigh::words));
		assertEquals("Die vollen Scheiben von F ergeben 15 thou, 1,5 thou zu hoch", Spoken.in(Locale.GERMAN, tooHigh::words));
		assertEquals("The full shims of F sum to 0.381 mm, 0.038 mm too high", Spoken.in(LengthUnit.MILLIMETRE, tooHigh::words));
	}

	@Test
	void phrasesWithinAPhraseAreInTheSameLanguage() {
		Phrase unsolved = Phrase.of("unsolved.notLevelled", Phrase.of("readings.count", 3, 4));
		assertEquals("not levelled: 3 readings for 4 hours", unsolved.words());
		assertEquals("nicht geebnet: 3 Messwerte f\u00fcr 4 Stunden", Spoken.in(Locale.GERMAN, unsolved::words));
		assertEquals(unsolved, Phrase.of("unsolved.notLevelled", Phrase.of("readings.count", 3, 4)));
	}

	@Test
	void aFindingIsToldInTheLanguageOfWhoeverLooksAtIt() {
		Advice advice = Advice.of("pad-depth", "F", Length.thou("20"), Length.thou("18"), Length.thou("2"));
		String english = advice.inOneLine();
		String german = Spoken.in(Locale.GERMAN, advice::inOneLine);
		assertEquals(english, advice.inOneLine());
		assertEquals(true, german.contains("St\u00fctzscheibe") && !english.contains("St\u00fctzscheibe"), german);
	}

	@Test
	void whatAnExtensionSaysStandsAsItSaidIt() {
		assertEquals("It's {0}: why. Cure?", new Advice("It's {0}", "why", "Cure?").inOneLine());
	}
}
