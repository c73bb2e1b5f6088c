package padwright.workbench.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A page of the guide as text with marks, so that it can be read in the window without a browser.
 *
 * @param title of the page
 * @param spans what is not plain, in the order of the text; spans can overlap
 */
record GuidePage(String title, String text, List<Span> spans) {

	/** How a part of the text is shown. */
	enum Look {
		TITLE, HEADING, STRONG, EMPHASIS, CODE, LINK
	}

	/**
	 * A part of the text.
	 *
	 * @param target of a link, or the anchor of a heading; empty for all else
	 */
	record Span(int start, int length, Look look, String target) {
	}

	private static final Pattern PART = Pattern.compile("<!--.*?-->|<(/?)([a-zA-Z0-9]+)([^>]*)>|[^<]+", Pattern.DOTALL);
	private static final Pattern TARGET = Pattern.compile("href=\"([^\"]*)\"");
	private static final Pattern ANCHOR = Pattern.compile("id=\"([^\"]*)\"");
	private static final Pattern PICTURE = Pattern.compile("alt=\"([^\"]*)\"");

	GuidePage {
		spans = List.copyOf(spans);
	}

	/** Reads a page of plain HTML, such as those of the guide are; what stands around its main text is left out. */
	static GuidePage of(String html) {
		Reader reader = new Reader();
		Matcher part = PART.matcher(html);
		while (part.find()) {
			if (part.group(2) != null) {
				reader.tag(part.group(2).toLowerCase(Locale.ROOT), !part.group(1).isEmpty(), part.group(3));
			} else if (!part.group().startsWith("<!--")) {
				reader.text(part.group());
			}
		}
		return new GuidePage(reader.title.strip(), reader.out.toString().strip() + "\n", reader.spans);
	}

	/** The sections that a search found, as a page of links to them. */
	static GuidePage found(String query, List<GuideSearch.Section> sections, String nothing) {
		StringBuilder out = new StringBuilder();
		List<Span> spans = new ArrayList<>();
		for (GuideSearch.Section section : sections) {
			spans.add(new Span(out.length(), section.name().length(), Look.LINK, section.target()));
			out.append(section.name()).append('\n').append(GuideSearch.excerpt(section, query)).append("\n\n");
		}
		return new GuidePage(query, sections.isEmpty() ? nothing + "\n" : out.toString(), spans);
	}

	/** The next link behind a place in the text, or the last one before it. */
	Optional<Span> link(int offset, boolean forward) {
		Stream<Span> links = spans.stream().filter(span -> span.look() == Look.LINK);
		return forward ? links.filter(span -> span.start() > offset).findFirst()
				: links.filter(span -> span.start() < offset).reduce((before, last) -> last);
	}

	/** Where the heading with an anchor stands in the text. */
	Optional<Integer> heading(String anchor) {
		return spans.stream().filter(span -> span.look() == Look.HEADING && span.target().equals(anchor)).map(Span::start)
				.findFirst();
	}

	private static final class Reader {

		private final StringBuilder out = new StringBuilder();
		private final List<Span> spans = new ArrayList<>();
		private final List<Object[]> open = new ArrayList<>();
		private String title = "";
		private boolean inTitle;
		private boolean inMain;
		private boolean kept;

		void text(String raw) {
			String words = unescaped(raw);
			if (inTitle) {
				title += words;
			} else if (inMain) {
				append(kept ? words : words.replaceAll("\\s+", " "));
			}
		}

		private void append(String words) {
			boolean blankBefore = out.length() == 0 || Character.isWhitespace(out.charAt(out.length() - 1));
			out.append(!kept && blankBefore && words.startsWith(" ") ? words.substring(1) : words);
		}

		void tag(String name, boolean end, String attributes) {
			switch (name) {
			case "title" -> inTitle = !end;
			case "main" -> inMain = !end;
			default -> {
				if (inMain) {
					shown(name, end, attributes);
				}
			}
			}
		}

		private void shown(String name, boolean end, String attributes) {
			switch (name) {
			case "h1" -> block(end, Look.TITLE, "");
			case "h2", "h3" -> block(end, Look.HEADING, found(ANCHOR, attributes));
			case "p", "figure", "ul", "ol", "table" -> newLine(end ? "" : "\n");
			case "li" -> newLine(end ? "" : "\u2022 ");
			case "tr" -> newLine("");
			case "td", "th" -> out.append(end ? "\t" : "");
			case "pre" -> {
				newLine(end ? "" : "\n");
				kept = !end;
				span(end, Look.CODE, "");
			}
			case "code" -> span(end, Look.CODE, "");
			case "em" -> span(end, Look.EMPHASIS, "");
			case "b", "strong" -> span(end, Look.STRONG, "");
			case "a" -> span(end, Look.LINK, found(TARGET, attributes));
			case "img" -> append("[" + found(PICTURE, attributes) + "]");
			default -> {
				// Nothing is shown of it.
			}
			}
		}

		private void block(boolean end, Look look, String anchor) {
			if (!end) {
				newLine("\n\n");
			}
			span(end, look, anchor);
			if (end) {
				out.append("\n");
			}
		}

		private void newLine(String more) {
			while (out.length() > 0 && (out.charAt(out.length() - 1) == ' ' || out.charAt(out.length() - 1) == '\t')) {
				out.setLength(out.length() - 1);
			}
			if (out.length() > 0 && out.charAt(out.length() - 1) != '\n') {
				out.append('\n');
			}
			out.append(out.length() > 0 || !more.isBlank() ? more : "");
		}

		private void span(boolean end, Look look, String target) {
			if (!end) {
				open.add(new Object[] { out.length(), target });
			} else if (!open.isEmpty()) {
				Object[] begun = open.remove(open.size() - 1);
				int start = Math.min((Integer) begun[0], out.length());
				spans.add(new Span(start, out.length() - start, look, (String) begun[1]));
			}
		}

		private static String found(Pattern pattern, String attributes) {
			Matcher found = pattern.matcher(attributes);
			return found.find() ? unescaped(found.group(1)) : "";
		}

		private static String unescaped(String text) {
			return text.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&nbsp;", "\u00a0")
					.replace("&amp;", "&");
		}
	}
}
