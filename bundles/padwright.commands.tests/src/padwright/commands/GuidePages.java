package padwright.commands;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The pages of the user guide, and the examples in them. */
final class GuidePages {

	/**
	 * An example.
	 *
	 * @param page it is on
	 * @param kind its class: doc, keys, stock, plan or row for documents and parts of them, shell, file, config
	 * @param file its name, of a document or another file
	 * @param codes of the findings it shows, as they come
	 * @param text without markup
	 */
	record Example(String page, String kind, Optional<String> file, List<String> codes, String text) {

		boolean isOfLanguage() {
			return List.of("doc", "system", "stock", "row").contains(kind);
		}

		@Override
		public String toString() {
			return page + ": " + text.lines().findFirst().orElse("");
		}
	}

	/** Tests run in the folder of their own bundle. */
	static final Path FOLDER = Path.of("..", "padwright.guide", "guide");
	private static final Pattern EXAMPLE = Pattern.compile(
			"<pre class=\"(\\w+)\"(?: data-file=\"([^\"]+)\")?(?: data-code=\"([^\"]+)\")?>(.*?)</pre>", Pattern.DOTALL);
	private static final Pattern ANY = Pattern.compile("<pre");

	private GuidePages() {
	}

	/** In English; the German ones have the same examples, as a test holds them to. */
	static List<Path> all() {
		return GuideLanguage.ENGLISH.files();
	}

	static String text(Path page) {
		try {
			return Files.readString(page);
		} catch (IOException missing) {
			throw new UncheckedIOException(missing);
		}
	}

	/** All examples, page by page. */
	static List<Example> examples() {
		return all().stream().flatMap(page -> examples(page).stream()).toList();
	}

	static List<Example> examples(Path page) {
		String text = text(page);
		List<Example> examples = new ArrayList<>();
		for (Matcher found = EXAMPLE.matcher(text); found.find();) {
			examples.add(new Example(page.getFileName().toString(), found.group(1), Optional.ofNullable(found.group(2)),
					found.group(3) == null ? List.of() : List.of(found.group(3).split(" ")), plain(found.group(4))));
		}
		if (ANY.matcher(text).results().count() != examples.size()) {
			throw new AssertionError(page + " has an example that is not understood");
		}
		return examples;
	}

	static String plain(String markup) {
		return markup.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
	}
}
