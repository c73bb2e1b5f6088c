package padwright.exchange.tree;

import java.util.OptionalInt;

/** Something from outside that cannot be taken over; the message says what, why and the cure. */
public final class ExchangeException extends Exception {

	private static final long serialVersionUID = 1;
	private static final int NOWHERE = 0;

	private final int line;

	/** For what has no line. */
	public ExchangeException(String message) {
		this(NOWHERE, message);
	}

	/** @param line from 1; 0 if it is not known */
	public ExchangeException(int line, String message) {
		super(message);
		this.line = line;
	}

	/** The line of the file that is at fault, from 1. */
	public OptionalInt line() {
		return line == NOWHERE ? OptionalInt.empty() : OptionalInt.of(line);
	}
}
