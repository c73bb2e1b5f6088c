package padwright.workup.diagnosis;

import padwright.workup.words.Phrase;

/** A note that a key system cannot play; the message says why, and which notes are near. */
public final class UnknownNoteException extends IllegalArgumentException {

	private static final long serialVersionUID = 1;

	private final transient Phrase why;

	UnknownNoteException(String key, Object... values) {
		why = Phrase.of(key, values);
	}

	/** In the language of the moment in which it is asked. */
	@Override
	public String getMessage() {
		return why.words();
	}
}
