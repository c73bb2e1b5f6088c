package padwright.workup.words;

import java.util.Locale;
import java.util.function.Supplier;

import padwright.engine.length.LengthUnit;

/** Has the whole program speak otherwise for a while. */
public final class Spoken {

	private Spoken() {
	}

	/** What some work makes of a language. */
	public static <T> T in(Locale language, Supplier<T> work) {
		Locale before = Texts.language();
		Locale.setDefault(Locale.Category.DISPLAY, language);
		try {
			return work.get();
		} finally {
			Locale.setDefault(Locale.Category.DISPLAY, before);
		}
	}

	/** What some work makes of a unit. */
	public static <T> T in(LengthUnit unit, Supplier<T> work) {
		LengthUnit before = ShownUnit.now();
		ShownUnit.choose(unit);
		try {
			return work.get();
		} finally {
			ShownUnit.choose(before);
		}
	}
}
