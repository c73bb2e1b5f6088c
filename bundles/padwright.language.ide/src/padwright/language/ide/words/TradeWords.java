package padwright.language.ide.words;

import java.util.Optional;

import padwright.workup.words.Texts;

/** What the words of the language mean at the bench, from {@code trade.properties} and its translations. */
public final class TradeWords {

	private static final Texts MEANINGS = Texts.beside(TradeWords.class, "trade");

	private TradeWords() {
	}

	/** The meaning of a keyword in a sentence or two, if it needs one. */
	public static Optional<String> meaning(String keyword) {
		return MEANINGS.find(keyword);
	}
}
