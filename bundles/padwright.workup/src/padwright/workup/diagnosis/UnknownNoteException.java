package padwright.workup.diagnosis;

/** A note that a key system cannot play; the message says why, and which notes are near. */
public final class UnknownNoteException extends IllegalArgumentException {

	private static final long serialVersionUID = 1;

	UnknownNoteException(String message) {
		super(message);
	}
}
