package padwright.workup.words;

import org.eclipse.emf.common.util.Enumerator;

/** Words of the grammar that name one of a few things, as the trade says them in the language of the reader. */
public final class Terms {

	private Terms() {
	}

	/** For example {@code far} for a hinge on the far side. */
	public static String of(Enumerator word) {
		return Messages.of("term." + word.getClass().getSimpleName() + "." + word.getLiteral());
	}
}
