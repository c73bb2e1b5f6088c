package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Every page can be read: it is well-formed, its links lead somewhere, its pictures are there and are told in words. */
class GuideDocumentTest {

	static List<Path> pages() {
		return Arrays.stream(GuideLanguage.values()).flatMap(language -> language.files().stream()).toList();
	}

	@ParameterizedTest
	@MethodSource("pages")
	void everythingThatIsNamedIsThere(Path file) {
		GuideDocument page = GuideDocument.of(file);
		assertAll(Stream.concat(page.all("a", "link").stream().map(link -> link.getAttribute("href")),
				page.all("img", "script").stream().map(link -> link.getAttribute("src"))).map(target -> () -> leads(file, target)));
	}

	private static void leads(Path from, String target) {
		String[] parts = target.split("#", 2);
		Path file = parts[0].isEmpty() ? from : from.resolveSibling(parts[0]);
		assertTrue(Files.isRegularFile(file), target);
		assertTrue(parts.length == 1 || GuideDocument.of(file).ids().contains(parts[1]), target);
	}

	@ParameterizedTest
	@MethodSource("pages")
	void picturesAreToldInWords(Path file) {
		GuideDocument.of(file).all("img").forEach(picture -> assertFalse(picture.getAttribute("alt").isBlank(),
				picture.getAttribute("src")));
	}

	/** The list of pages and the search lead to headings. */
	@ParameterizedTest
	@MethodSource("pages")
	void everyHeadingCanBeLinkedTo(Path file) {
		GuideDocument page = GuideDocument.of(file);
		List<String> ids = page.inText("h2", "h3").stream().map(heading -> heading.getAttribute("id")).toList();
		assertEquals(ids.size(), new HashSet<>(ids).size(), ids.toString());
		assertFalse(ids.contains(""), ids.toString());
		assertEquals(1, page.inText("h1").size());
		assertEquals(1, page.all("a").stream().filter(GuideDocumentTest::isOfThisPage).count());
	}

	private static boolean isOfThisPage(Element link) {
		return link.getAttribute("aria-current").equals("page");
	}
}
