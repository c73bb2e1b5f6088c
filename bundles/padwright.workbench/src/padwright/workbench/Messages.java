package padwright.workbench;

import java.text.MessageFormat;
import java.util.Optional;
import java.util.ResourceBundle;

/** The words of the workbench in the user's language, from {@code messages.properties} and its translations. */
public final class Messages {

	private static final ResourceBundle WORDS = ResourceBundle.getBundle("padwright.workbench.messages");

	private Messages() {
	}

	/** The text of a key, with {@code {0}}, {@code {1}} … replaced by arguments. */
	public static String get(String key, Object... arguments) {
		return arguments.length == 0 ? WORDS.getString(key) : MessageFormat.format(WORDS.getString(key), arguments);
	}

	/** The text of a key, if there is one. */
	public static Optional<String> find(String key) {
		return WORDS.containsKey(key) ? Optional.of(WORDS.getString(key)) : Optional.empty();
	}
}
