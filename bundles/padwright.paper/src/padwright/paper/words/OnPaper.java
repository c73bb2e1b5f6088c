package padwright.paper.words;

import java.util.Locale;
import java.util.function.Supplier;

import padwright.engine.length.LengthUnit;
import padwright.workup.words.ShownUnit;
import padwright.workup.words.Texts;

/** In which words papers are drawn: in one language, with shims and gaps in thou, as each paper says itself. */
public final class OnPaper {

	private OnPaper() {
	}

	/** Draws something in a language; English where there is no translation. */
	public static <T> T in(Locale language, Supplier<T> drawing) {
		return Texts.in(language, () -> ShownUnit.in(LengthUnit.THOU, drawing));
	}

	/** The language of the words, as it is written in a file. */
	public static String language() {
		return Messages.of("language");
	}
}
