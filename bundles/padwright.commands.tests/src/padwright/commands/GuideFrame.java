package padwright.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands around the text of every page of the guide: its head, search, the list of pages beside it and the way on at its
 * foot. All of it follows from the contents on {@code index.html} and from the headings of the page itself. Examples are
 * written in English pages alone, and repeated in the others.
 */
final class GuideFrame {

	static final String CONTENTS = "index.html";

	private static final Pattern MAIN = Pattern.compile("<main>\n(.*)</main>", Pattern.DOTALL);
	private static final Pattern OF_CONTENTS = Pattern.compile(
			"<h2 id=\"[^\"]+\">(?<group>[^<]+)</h2>|<li><a href=\"(?<file>[^\"]+)\">(?<title>[^<]+)</a>");
	private static final Pattern TITLE = Pattern.compile("<h1>(.*?)</h1>", Pattern.DOTALL);
	private static final Pattern EXAMPLE = Pattern.compile("<pre.*?</pre>", Pattern.DOTALL);
	private static final Pattern HEADING = Pattern.compile("<h([23]) id=\"([^\"]+)\">(.*?)</h\\1>", Pattern.DOTALL);

	/** A page as the contents name it; without a file the title of a group of pages. */
	private record Entry(String file, String title) {
	}

	/** A heading on a page. */
	record Heading(String id, String words, int start, int end) {
	}

	private final GuideLanguage language;
	private final List<Entry> contents = new ArrayList<>();

	GuideFrame(GuideLanguage language) {
		this.language = language;
		Matcher entry = OF_CONTENTS.matcher(main(language.folder().resolve(CONTENTS)));
		while (entry.find()) {
			contents.add(entry.group("file") == null ? new Entry("", entry.group("group"))
					: new Entry(entry.group("file"), entry.group("title")));
		}
	}

	/** The files of all pages, in the order of the contents, which come first. */
	List<String> files() {
		return pages().stream().map(Entry::file).toList();
	}

	private List<Entry> pages() {
		List<Entry> pages = new ArrayList<>(List.of(new Entry(CONTENTS, title(language.folder().resolve(CONTENTS)))));
		contents.stream().filter(entry -> !entry.file().isEmpty()).forEach(pages::add);
		return pages;
	}

	private static String main(Path page) {
		Matcher main = MAIN.matcher(GuidePages.text(page));
		if (!main.find()) {
			throw new AssertionError(page + ": the text stands in no <main>");
		}
		return main.group(1);
	}

	static String title(Path page) {
		Matcher title = TITLE.matcher(main(page));
		if (!title.find()) {
			throw new AssertionError(page + " has no <h1>");
		}
		return title.group(1);
	}

	static List<Heading> headings(String main) {
		return HEADING.matcher(main).results()
				.map(heading -> new Heading(heading.group(2), heading.group(3), heading.start(), heading.end())).toList();
	}

	/** The text of a page, with the examples of the English one. */
	String text(String file) {
		return withExamplesOf(GuideLanguage.ENGLISH.folder().resolve(file), main(language.folder().resolve(file)));
	}

	/** A page as it has to be. */
	String framed(Path page) {
		String file = page.getFileName().toString();
		String main = text(file);
		return String.join("\n", "<!DOCTYPE html>", "<html lang=\"" + language.code + "\">", "<head>", "<meta charset=\"utf-8\">",
				"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">",
				"<title>" + title(page) + " · Padwright</title>",
				"<link rel=\"stylesheet\" href=\"" + language.toShared() + "style.css\">", "</head>", "<body>", "<header>",
				"<p><a href=\"index.html\">" + pages().get(0).title() + "</a>",
				"<a href=\"#pages\">" + language.allPages + "</a>", otherLanguage(file) + "</p>",
				"<div id=\"search\" data-label=\"" + language.search + "\" data-none=\"" + language.nothing + "\"></div>",
				"</header>", "<main>\n" + main + "</main>", "<footer>" + wayOn(file) + "</footer>",
				"<nav id=\"pages\" aria-label=\"" + language.pages + "\">", list(file, headings(main)) + "</nav>",
				"<script src=\"words.js\"></script>", "<script src=\"" + language.toShared() + "search.js\"></script>",
				"</body>", "</html>", "");
	}

	private static String withExamplesOf(Path other, String main) {
		List<String> examples = EXAMPLE.matcher(main(other)).results().map(MatchResult::group).toList();
		if (EXAMPLE.matcher(main).results().count() != examples.size()) {
			throw new AssertionError(other + " has other examples in another language");
		}
		Iterator<String> next = examples.iterator();
		return EXAMPLE.matcher(main).replaceAll(example -> Matcher.quoteReplacement(next.next()));
	}

	private String otherLanguage(String file) {
		GuideLanguage other = language.other();
		return "<a href=\"" + language.otherPage(file) + "\" lang=\"" + other.code + "\" hreflang=\"" + other.code + "\">"
				+ other.label + "</a>";
	}

	private String wayOn(String file) {
		List<Entry> pages = pages();
		int at = files().indexOf(file);
		return (at > 0 ? link(pages.get(at - 1), " rel=\"prev\"") : "")
				+ (at >= 0 && at < pages.size() - 1 ? link(pages.get(at + 1), " rel=\"next\"") : "");
	}

	private String list(String current, List<Heading> headings) {
		StringBuilder list = new StringBuilder("<ul>\n" + item(pages().get(0), current, headings));
		for (Entry entry : contents) {
			list.append(entry.file().isEmpty() ? "</ul>\n<p>" + entry.title() + "</p>\n<ul>\n" : item(entry, current, headings));
		}
		return list.append("</ul>\n").toString();
	}

	private static String item(Entry entry, String current, List<Heading> headings) {
		if (!entry.file().equals(current)) {
			return "<li>" + link(entry, "") + "</li>\n";
		}
		StringBuilder item = new StringBuilder("<li>" + link(entry, " aria-current=\"page\""));
		headings.forEach(heading -> item.append(item.indexOf("<ul>") < 0 ? "\n<ul>\n" : "")
				.append("<li><a href=\"#" + heading.id() + "\">" + heading.words() + "</a></li>\n"));
		return item.append(headings.isEmpty() ? "</li>\n" : "</ul>\n</li>\n").toString();
	}

	private static String link(Entry entry, String attributes) {
		return "<a href=\"" + entry.file() + "\"" + attributes + ">" + entry.title() + "</a>";
	}
}
