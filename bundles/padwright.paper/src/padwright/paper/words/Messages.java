package padwright.paper.words;

import padwright.workup.words.Texts;

/** The words of papers, from {@code messages.properties} and its translations. */
public final class Messages {

	private static final Texts TEXTS = Texts.beside(Messages.class, "messages");

	private Messages() {
	}

	/**
	 * A text by its key, as {@link Texts#of} makes it.
	 *
	 * @throws java.util.MissingResourceException if there is no such text
	 */
	public static String of(String key, Object... arguments) {
		return TEXTS.of(key, arguments);
	}
}
