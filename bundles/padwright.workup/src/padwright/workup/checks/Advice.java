package padwright.workup.checks;

/**
 * A finding in words.
 *
 * @param what what is found, without a full stop
 * @param why why it matters, without a full stop
 * @param cure what to do about it, without a full stop; may be a question
 */
public record Advice(String what, String why, String cure) {

	/** All three in one line, as in {@code What: why. Cure.} */
	public String inOneLine() {
		return what + ": " + why + ". " + cure + (cure.endsWith("?") ? "" : ".");
	}
}
