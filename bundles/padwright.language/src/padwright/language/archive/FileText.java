package padwright.language.archive;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import padwright.language.files.SourceText;
import padwright.language.files.UnreadableException;

/**
 * The text of a file, with what can be told of it without reading it as a document.
 *
 * @param text or null if the file cannot be used
 * @param unreadable why it cannot be used, or null
 */
record FileText(String text, String unreadable) {

	private static final String UNREADABLE = "unreadable: ";

	/** Every plan has its name so; a comment may look alike, and there may be others between. */
	private static final Pattern PLAN =
			Pattern.compile("\\bplan(?:[\\s\\u00A0\\uFEFF]|//[^\\r\\n]*)+\\^?([\\p{L}\\p{N}_\u266D\u266F]+)");

	static FileText of(Path file, Map<Path, String> otherTexts) {
		try {
			String other = otherTexts.get(file);
			return new FileText(other == null ? SourceText.read(file) : other, null);
		} catch (UnreadableException reason) {
			return new FileText(null, reason.getMessage());
		}
	}

	boolean isReadable() {
		return text != null;
	}

	String hash() {
		return isReadable() ? Fingerprint.of(text.getBytes(StandardCharsets.UTF_8)) : UNREADABLE + unreadable;
	}

	static boolean isOfReadable(String hash) {
		return !hash.startsWith(UNREADABLE);
	}

	/** Whether other files may have links to it: it holds a system or stock, or a word that looks like it. */
	boolean isSource() {
		return isReadable() && (text.contains("system") || text.contains("stock"));
	}

	/** The names of its plans, and maybe more. */
	Set<String> planNames() {
		return isReadable() ? PLAN.matcher(text).results().map(match -> match.group(1)).collect(Collectors.toSet())
				: Set.of();
	}
}
