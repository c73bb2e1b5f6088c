package padwright.language.files;

/** A file that cannot be used at all; the message goes on from the file's name, as in "is not a text file". */
public final class UnreadableException extends Exception {

	private static final long serialVersionUID = 1;

	public UnreadableException(String reason) {
		super(reason);
	}
}
