package padwright.language.validation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Documents of a shop with the findings expected in them.
 *
 * @param title begins with the code of the finding that the case is about
 * @param documents marked text by file name
 */
record FindingCase(String title, Map<String, String> documents) {

	private static final String CASE = "== ";
	private static final String FILE = "-- ";
	private static final String SHARED = "shared";

	/** The code of the finding that the case is about. */
	String code() {
		return title.substring(0, title.indexOf(':'));
	}

	/** Whether the finding that the case is about is expected in it; else it is a near miss. */
	boolean expectsItsFinding() {
		return documents.values().stream().anyMatch(text -> text.contains(" " + code() + "|"));
	}

	/**
	 * The cases of a file. Each begins with a line {@code == code: what it is}, each document in it with a line
	 * {@code -- file name}; those of the case {@code shared} belong to every case that has none of that name.
	 */
	static List<FindingCase> read(String resource) {
		List<FindingCase> cases = new ArrayList<>();
		Map<String, String> shared = Map.of();
		for (String section : text(resource).split("(?m)^" + CASE)) {
			String title = section.lines().findFirst().orElse("");
			if (title.equals(SHARED)) {
				shared = documents(section, Map.of());
			} else if (title.contains(":")) {
				cases.add(new FindingCase(title, documents(section, shared)));
			}
		}
		return cases;
	}

	private static Map<String, String> documents(String section, Map<String, String> shared) {
		Map<String, String> documents = new LinkedHashMap<>(shared);
		String[] parts = section.split("(?m)^" + FILE);
		for (int index = 1; index < parts.length; index++) {
			int lineEnd = parts[index].indexOf('\n');
			documents.put(parts[index].substring(0, lineEnd), parts[index].substring(lineEnd + 1).stripTrailing());
		}
		return documents;
	}

	private static String text(String resource) {
		try (var reader = new BufferedReader(new InputStreamReader(
				FindingCase.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
			return String.join("\n", reader.lines().toList());
		} catch (IOException missing) {
			throw new UncheckedIOException(missing);
		}
	}

	@Override
	public String toString() {
		return title;
	}
}
