package padwright.views;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words of the views in the language of the user. */
public final class Messages {

	static final String BUNDLE = "padwright.views.messages";

	private Messages() {
	}

	/**
	 * A text by its key, with {@code arguments} in the places of {@code {0}}, {@code {1}} ….
	 *
	 * @throws java.util.MissingResourceException if there is no such text
	 */
	public static String of(String key, Object... arguments) {
		String pattern = ResourceBundle.getBundle(BUNDLE, Locale.getDefault(), Messages.class.getClassLoader())
				.getString(key);
		return new MessageFormat(pattern, Locale.ROOT).format(arguments);
	}
}
