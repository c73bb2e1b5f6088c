package padwright.language.ide.words;

import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;

/** What the words of the language mean at the bench. */
public final class TradeWords {

	private static final ResourceBundle MEANINGS = ResourceBundle.getBundle("padwright.language.ide.words.trade");

	private TradeWords() {
	}

	/** The meaning of a keyword in a sentence or two, if it needs one. */
	public static Optional<String> meaning(String keyword) {
		try {
			return Optional.of(MEANINGS.getString(keyword));
		} catch (MissingResourceException selfExplaining) {
			return Optional.empty();
		}
	}
}
