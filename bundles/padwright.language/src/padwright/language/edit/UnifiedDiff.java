package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Edits of a text as the lines that they change: a unified diff without lines of context. */
public final class UnifiedDiff {

	private UnifiedDiff() {
	}

	/**
	 * The hunks, each with its heading; empty where nothing changes.
	 *
	 * @param edits that do not overlap, each within one line; one may insert whole lines before a line
	 */
	public static List<String> of(List<TextEdit> edits, String text) {
		Map<Integer, List<TextEdit>> byLine = new TreeMap<>();
		edits.forEach(edit -> byLine.computeIfAbsent(lineStart(text, edit.offset()), none -> new ArrayList<>()).add(edit));
		List<String> hunks = new ArrayList<>();
		int added = 0;
		for (Map.Entry<Integer, List<TextEdit>> line : byLine.entrySet()) {
			String old = line(text, line.getKey());
			String edited = TextEdit.apply(line.getValue().stream()
					.map(edit -> new TextEdit(edit.offset() - line.getKey(), edit.length(), edit.text())).toList(), old);
			int number = 1 + (int) text.substring(0, line.getKey()).chars().filter(sign -> sign == '\n').count();
			added += hunk(number, added, old, edited, hunks);
		}
		return hunks;
	}

	private static int hunk(int number, int added, String old, String edited, List<String> hunks) {
		List<String> lines = edited.lines().toList();
		boolean isInsertion = lines.size() > 1 && lines.get(lines.size() - 1).equals(old);
		List<String> written = isInsertion ? lines.subList(0, lines.size() - 1) : lines;
		if (edited.equals(old)) {
			return 0;
		}
		hunks.add("@@ -" + (isInsertion ? number - 1 + ",0" : number + ",1") + " +" + (number + added) + ","
				+ written.size() + " @@");
		if (!isInsertion) {
			hunks.add("-" + old);
		}
		written.forEach(line -> hunks.add("+" + line));
		return written.size() - (isInsertion ? 0 : 1);
	}

	private static int lineStart(String text, int offset) {
		return text.lastIndexOf('\n', offset - 1) + 1;
	}

	/** Without its end. */
	private static String line(String text, int start) {
		int end = text.indexOf('\n', start);
		String line = end < 0 ? text.substring(start) : text.substring(start, end);
		return line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
	}
}
