package padwright.language;

import padwright.workup.checks.Severity;

/** A finding without its words: where it is in a text, how grave it is, and which. */
public record Mark(int offset, int length, Severity severity, String code) {

	public int end() {
		return offset + length;
	}
}
