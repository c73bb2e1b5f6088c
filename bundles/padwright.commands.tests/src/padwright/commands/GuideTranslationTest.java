package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Both languages of the guide say the same in the same places; what the examples show is tried in English. */
class GuideTranslationTest {

	private static final String[] BLOCKS = { "h1", "h2", "h3", "p", "ul", "ol", "li", "table", "tr", "th", "td", "pre", "figure",
			"figcaption", "img" };

	static Stream<String> pages() {
		return new GuideFrame(GuideLanguage.ENGLISH).files().stream();
	}

	@Test
	void bothHaveTheSamePagesInTheSameOrder() {
		assertEquals(pages().toList(), new GuideFrame(GuideLanguage.GERMAN).files());
	}

	@ParameterizedTest
	@MethodSource("pages")
	void bothHaveTheSameBlocksExamplesAndPictures(String file) {
		assertEquals(blocks(GuideLanguage.ENGLISH, file), blocks(GuideLanguage.GERMAN, file));
	}

	/** Within a sentence their order is the language's. */
	@ParameterizedTest
	@MethodSource("pages")
	void bothNameTheSameWordsOfTheProgramAndLinks(String file) {
		assertEquals(named(GuideLanguage.ENGLISH, file), named(GuideLanguage.GERMAN, file));
	}

	private static List<String> blocks(GuideLanguage language, String file) {
		return page(language, file).inText(BLOCKS).stream().map(block -> switch (block.getTagName()) {
		case "pre" -> "pre " + block.getAttribute("class") + " " + block.getAttribute("data-file") + " "
				+ block.getAttribute("data-code") + "\n" + block.getTextContent();
		case "img" -> "img " + picture(language, file, block);
		default -> block.getTagName() + " " + block.getAttribute("id");
		}).toList();
	}

	/** A picture with words is another in German, of the same name. */
	private static String picture(GuideLanguage language, String file, Element picture) {
		return GuidePages.FOLDER.relativize(language.folder().resolve(file).resolveSibling(picture.getAttribute("src")).normalize())
				.toString().replace("pictures/de/", "pictures/");
	}

	private static List<String> named(GuideLanguage language, String file) {
		return page(language, file).inText("code", "a").stream()
				.map(element -> element.getTagName().equals("a") ? "a " + element.getAttribute("href")
						: "code " + element.getTextContent().replaceAll("\\s+", " "))
				.sorted().toList();
	}

	private static GuideDocument page(GuideLanguage language, String file) {
		return GuideDocument.of(language.folder().resolve(file));
	}
}
