package padwright.workup.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days for people, as the language in which the program speaks writes them. */
public final class Days {

	private static final DateTimeFormatter GERMAN = DateTimeFormatter.ofPattern("dd.MM.yyyy", Locale.ROOT);

	private Days() {
	}

	/** For example {@code 2026-03-09}, in German {@code 09.03.2026}. */
	public static String of(LocalDate day) {
		return Texts.language().getLanguage().equals(Locale.GERMAN.getLanguage()) ? GERMAN.format(day) : day.toString();
	}
}
