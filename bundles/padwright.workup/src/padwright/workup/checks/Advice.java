package padwright.workup.checks;

import padwright.workup.words.Phrase;

/**
 * What a finding has to say.
 *
 * @param what what is found, without a full stop
 * @param why why it matters, without a full stop
 * @param cure what to do about it, without a full stop; may be a question
 */
public record Advice(Phrase what, Phrase why, Phrase cure) {

	/** What is said alike in every language, as by a shop or by an extension. */
	public Advice(String what, String why, String cure) {
		this(Phrase.plain(what), Phrase.plain(why), Phrase.plain(cure));
	}

	/**
	 * The texts {@code key.what}, {@code key.why} and {@code key.cure}, each with the same {@code arguments}.
	 *
	 * @throws java.util.MissingResourceException if there is no such text
	 */
	public static Advice of(String key, Object... arguments) {
		return new Advice(Phrase.of(key + ".what", arguments), Phrase.of(key + ".why", arguments),
				Phrase.of(key + ".cure", arguments));
	}

	/** All three in one line, as in {@code What: why. Cure.} */
	public String inOneLine() {
		String last = cure.words();
		return what + ": " + why + ". " + last + (last.endsWith("?") ? "" : ".");
	}
}
