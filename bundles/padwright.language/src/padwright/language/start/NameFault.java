package padwright.language.start;

import java.util.Optional;

import org.antlr.runtime.ANTLRStringStream;
import org.antlr.runtime.Token;

import padwright.language.parser.antlr.internal.InternalPadwrightLexer;

/** Why a text cannot be the name of a system, a stock or a plan. */
public enum NameFault {

	/** There is none. */
	MISSING,
	/** It has other signs than letters, digits, _, ♭ and ♯, or begins with a digit. */
	SIGNS,
	/** It is a word of the language. */
	KEYWORD;

	private static final String ESCAPE = "^";

	/** What is wrong with a name; nothing if it can be written as it is. */
	public static Optional<NameFault> of(String name) {
		if (name.isEmpty()) {
			return Optional.of(MISSING);
		}
		if (name.startsWith(ESCAPE)) {
			return Optional.of(SIGNS);
		}
		if (isName(name)) {
			return Optional.empty();
		}
		return Optional.of(isName(ESCAPE + name) ? KEYWORD : SIGNS);
	}

	/** A name as references to it are written: in quotation marks where it is no word, or one of the language. */
	public static String reference(String name) {
		return isName(name) ? name : '"' + name + '"';
	}

	/**
	 * The name itself.
	 *
	 * @throws IllegalArgumentException if it has a fault
	 */
	static String require(String name) {
		of(name).ifPresent(fault -> {
			throw new IllegalArgumentException("\"" + name + "\" cannot be a name: " + fault);
		});
		return name;
	}

	private static boolean isName(String text) {
		Token first = new InternalPadwrightLexer(new ANTLRStringStream(text)).nextToken();
		return first.getType() == InternalPadwrightLexer.RULE_ID && first.getText().length() == text.length();
	}
}
