package padwright.workup.checks;

import padwright.workup.words.Messages;

/**
 * A finding in words.
 *
 * @param what what is found, without a full stop
 * @param why why it matters, without a full stop
 * @param cure what to do about it, without a full stop; may be a question
 */
public record Advice(String what, String why, String cure) {

	/**
	 * The texts {@code key.what}, {@code key.why} and {@code key.cure}, each with the same {@code arguments}.
	 *
	 * @throws java.util.MissingResourceException if there is no such text
	 */
	public static Advice of(String key, Object... arguments) {
		return new Advice(Messages.of(key + ".what", arguments), Messages.of(key + ".why", arguments),
				Messages.of(key + ".cure", arguments));
	}

	/** All three in one line, as in {@code What: why. Cure.} */
	public String inOneLine() {
		return what + ": " + why + ". " + cure + (cure.endsWith("?") ? "" : ".");
	}
}
