package padwright.language.messages;

import java.util.Optional;

import padwright.workup.words.Texts;

/** What is said of a text that cannot be read, from {@code messages.properties} and its translations. */
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

	/** A text without arguments, if there is one. */
	public static Optional<String> find(String key) {
		return TEXTS.find(key);
	}
}
