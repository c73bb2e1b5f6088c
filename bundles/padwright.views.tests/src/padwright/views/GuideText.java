package padwright.views;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What stands in the examples of the guide's pages. */
public final class GuideText {

	private static final Path PAGES = Path.of("..", "padwright.guide", "guide");
	private static final Pattern EXAMPLE = Pattern.compile("<pre class=\"(?:doc|file|system)\"(?: data-file=\"([^\"]+)\")?>([^<]*)</pre>");

	private GuideText() {
	}

	/** An example in a file of its own, or without one. */
	record Example(String file, String text) {
	}

	static List<Example> examples(String page) throws IOException {
		Stream<Example> examples = EXAMPLE.matcher(Files.readString(PAGES.resolve(page))).results()
				.map(found -> new Example(found.group(1) == null ? "" : found.group(1), plain(found.group(2))));
		return examples.toList();
	}

	/** The first example of a page that begins so. */
	public static String example(String page, String beginning) throws IOException {
		return examples(page).stream().map(Example::text).filter(text -> text.startsWith(beginning)).findFirst().orElseThrow();
	}

	private static String plain(String html) {
		return html.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
	}
}
