package padwright.workup.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * What a result has to say: a text of {@code messages.properties} by its key, and its values. Words are made of it where it
 * is shown, in the language and the unit of that moment; so a result is the same in every language.
 *
 * @param key of the text
 * @param values what stands in its places, as {@link Texts#of} takes it; phrases too
 */
public record Phrase(String key, List<Object> values) {

	private static final String PLAIN = "phrase.plain";

	public Phrase {
		values = Collections.unmodifiableList(new ArrayList<>(values));
	}

	/** A text by its key, with its values. */
	public static Phrase of(String key, Object... values) {
		return new Phrase(key, Arrays.asList(values));
	}

	/** What is said alike in every language, such as what the user wrote. */
	public static Phrase plain(String said) {
		return of(PLAIN, said);
	}

	/** In words, now. */
	public String words() {
		return Messages.of(key, values.toArray());
	}

	/** As {@link #words}, for what is put together of several. */
	@Override
	public String toString() {
		return words();
	}
}
