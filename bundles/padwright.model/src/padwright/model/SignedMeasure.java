package padwright.model;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A change of a length as it was written: a sign and a measure, such as {@code +0.5 thou}.
 *
 * @param less whether something was taken away
 */
public record SignedMeasure(boolean less, Measure measure) {

	private static final Pattern FORM = Pattern.compile("([+-])\\s*(.*)");
	private static final String LESS = "-";
	private static final String MORE = "+";

	/**
	 * The change written as {@code text}.
	 *
	 * @throws IllegalArgumentException if it is not a sign and a length
	 */
	public static SignedMeasure valueOf(String text) {
		Matcher form = FORM.matcher(text.strip());
		if (!form.matches()) {
			throw new IllegalArgumentException("\"" + text + "\" is not a change such as +0.5 or -0.5 thou");
		}
		return new SignedMeasure(form.group(1).equals(LESS), Measure.valueOf(form.group(2)));
	}

	@Override
	public String toString() {
		return (less ? LESS : MORE) + measure;
	}
}
