package padwright.workup.words;

import java.util.Locale;

/** A figure known to two digits, among the values of a {@link Phrase}. */
public record TwoDigits(double figure) {

	/** With the decimal sign of the language of now. */
	@Override
	public String toString() {
		return Texts.decimal(String.format(Locale.ROOT, "%.2g", figure));
	}
}
