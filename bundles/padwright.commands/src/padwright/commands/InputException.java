package padwright.commands;

import java.nio.file.Path;

/** Something the user gave cannot be used; the message says what, why and the cure. */
final class InputException extends RuntimeException {

	private static final long serialVersionUID = 1;

	InputException(String message) {
		super(message);
	}

	InputException(Path file, String reason) {
		this(ShownPath.of(file) + " " + reason);
	}
}
