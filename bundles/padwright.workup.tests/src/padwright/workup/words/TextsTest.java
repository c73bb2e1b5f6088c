package padwright.workup.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

class TextsTest {

	private final Locale whole = Locale.getDefault();
	private final Locale display = Locale.getDefault(Locale.Category.DISPLAY);
	private final Locale format = Locale.getDefault(Locale.Category.FORMAT);
	private final Texts texts = Texts.beside(TextsTest.class, "messages");

	@AfterEach
	void putLocalesBack() {
		Locale.setDefault(whole);
		Locale.setDefault(Locale.Category.DISPLAY, display);
		Locale.setDefault(Locale.Category.FORMAT, format);
	}

	@Test
	void speaksTheLanguageOfTheMoment() {
		Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMAN);
		assertEquals("Klappe F♯", texts.of("rule-broken.key", "F♯"));
		Locale.setDefault(Locale.Category.DISPLAY, Locale.US);
		assertEquals("Key F♯", texts.of("rule-broken.key", "F♯"));
	}

	@Test
	void speaksGermanInEveryGermanCountry() {
		Locale.setDefault(Locale.Category.DISPLAY, new Locale("de", "AT"));
		assertEquals("Klappe F♯", texts.of("rule-broken.key", "F♯"));
	}

	@Test
	void speaksEnglishWhereThereIsNoTranslationEvenOnAGermanMachine() {
		Locale.setDefault(Locale.GERMANY);
		for (Locale foreign : new Locale[] { Locale.ENGLISH, Locale.FRENCH, Locale.ROOT }) {
			Locale.setDefault(Locale.Category.DISPLAY, foreign);
			assertEquals("Key F♯", texts.of("rule-broken.key", "F♯"), foreign.toString());
		}
	}

	@Test
	void figuresAreTheSameInEveryLanguage() {
		Locale.setDefault(Locale.GERMANY);
		assertEquals("1234567 Messwerte für 1.5 Stunden", texts.of("reading-count.few.what", 1_234_567, 1.5));
	}

	@Test
	void whatIsCountedIsSaidOfOneAndOfMany() {
		assertEquals(List.of("0 readings for 4 hours", "1 reading for 4 hours", "4 readings for 1 hour"), Spoken.in(Locale.ENGLISH,
				() -> List.of(readings(0, 4), readings(1, 4), readings(4, 1))));
		assertEquals(List.of("0 Messwerte für 1 Stunde", "1 Messwert für 4 Stunden"),
				Spoken.in(Locale.GERMAN, () -> List.of(readings(0, 1), readings(1, 4))));
	}

	private String readings(int readings, int hours) {
		return texts.of("reading-count.few.what", readings, hours);
	}

	@Test
	void apostrophesAreSaidOnce() {
		assertEquals("a pad's thickness", Spoken.in(Locale.ENGLISH, () -> texts.of("plausible.padThickness")));
	}

	@Test
	void everyThreadSpeaksTheSame() throws InterruptedException, ExecutionException {
		Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMAN);
		assertEquals("Klappe F♯", CompletableFuture.supplyAsync(() -> texts.of("rule-broken.key", "F♯")).get());
		ShownUnit.choose(LengthUnit.MILLIMETRE);
		try {
			assertEquals("0,0127 mm", CompletableFuture.supplyAsync(() -> LengthWords.withUnit(Length.thou("0.5"))).get());
		} finally {
			ShownUnit.choose(LengthUnit.THOU);
		}
	}

	@Test
	void missingTextIsAMistake() {
		assertThrows(MissingResourceException.class, () -> texts.of("no such text"));
		assertEquals(Optional.empty(), texts.find("no such text"));
	}
}
