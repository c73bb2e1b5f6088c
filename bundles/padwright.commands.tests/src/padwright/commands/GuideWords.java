package padwright.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;

/** What the search of the guide looks through: page, anchor, title, heading and text of every section, as a script. */
final class GuideWords {

	static final String FILE = "words.js";

	private static final Gson JSON = new GsonBuilder().disableHtmlEscaping().create();
	private static final String WITHIN_WORDS = "</?(?:code|em|i|b|strong|a)\\b[^>]*>";

	private GuideWords() {
	}

	static String of(GuideLanguage language) {
		GuideFrame frame = new GuideFrame(language);
		return frame.files().stream().flatMap(file -> sections(frame, language.folder().resolve(file)).stream())
				.map(JSON::toJson).collect(Collectors.joining(",\n", "// Made from the pages by GuideFrameTest.\nconst WORDS = [\n",
						"\n];\n"));
	}

	private static List<List<String>> sections(GuideFrame frame, Path page) {
		String file = page.getFileName().toString();
		String main = frame.text(file).replaceFirst("(?s)<h1>.*?</h1>", "");
		String title = plain(GuideFrame.title(page));
		List<List<String>> sections = new ArrayList<>();
		List<String> section = List.of(file, "", title, title);
		int begin = 0;
		for (GuideFrame.Heading heading : GuideFrame.headings(main)) {
			sections.add(withText(section, main.substring(begin, heading.start())));
			section = List.of(file, heading.id(), title, plain(heading.words()));
			begin = heading.end();
		}
		sections.add(withText(section, main.substring(begin)));
		return sections;
	}

	private static List<String> withText(List<String> section, String text) {
		List<String> whole = new ArrayList<>(section);
		whole.add(plain(text));
		return whole;
	}

	private static String plain(String markup) {
		return GuidePages.plain(markup.replaceAll(WITHIN_WORDS, "").replaceAll("<[^>]+>", " ")).replaceAll("\\s+", " ").strip();
	}
}
