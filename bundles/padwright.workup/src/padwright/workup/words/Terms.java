package padwright.workup.words;

import org.eclipse.emf.common.util.Enumerator;

/** Words of the grammar that name one of a few things, as the trade says them in the language of the reader. */
public final class Terms {

	private Terms() {
	}

	/** For example {@code far} for a hinge on the far side. */
	public static String of(Enumerator word) {
		return phrase(word).words();
	}

	/** The same, among what a result has to say. */
	public static Phrase phrase(Enumerator word) {
		return Phrase.of("term." + word.getClass().getSimpleName() + "." + word.getLiteral());
	}
}
