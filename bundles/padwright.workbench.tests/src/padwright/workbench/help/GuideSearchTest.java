package padwright.workbench.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.workbench.help.GuidePage.Span;
import padwright.workbench.help.GuideSearch.Section;

class GuideSearchTest {

	private static final Path GUIDE = Path.of("../padwright.guide/guide");
	private static final String WORDS = """
			// Made.
			const WORDS = [
			["a.html","","A page","A page","Of saddles, and more."],
			["a.html","one","A page","A saddle","It is open."],
			["b.html","x","Other","Fühler","Kein Sattel, Straße; he said \\"yes\\"."]
			];
			""";

	private final GuideSearch search = new GuideSearch(WORDS);

	private List<String> targets(String query) {
		return search.find(query).stream().map(Section::target).toList();
	}

	@Test
	void headingsCountMoreThanTextAndWholeWordsMoreThanParts() {
		assertEquals(List.of("a.html#one", "a.html"), targets("saddle"));
		assertEquals(List.of("a.html#one", "a.html"), targets("addle"));
	}

	@Test
	void allWordsHaveToBeThere() {
		assertEquals(List.of("a.html#one"), targets("saddle open"));
		assertEquals(List.of(), targets("saddle other"));
		assertEquals(List.of(), targets("  "));
	}

	@Test
	void caseAndAccentsDoNotCount() {
		assertEquals(List.of("b.html#x"), targets("FUHLER strasse \"YES\""));
	}

	@Test
	void whatIsFoundIsAPageOfLinks() {
		GuidePage page = GuidePage.found("saddle", search.find("saddle"), "nothing");
		assertEquals("A page: A saddle\nIt is open.\n\nA page\nOf saddles, and more.\n\n", page.text());
		Span first = page.link(-1, true).orElseThrow();
		Span second = page.link(first.start(), true).orElseThrow();
		assertEquals(List.of("a.html#one", "a.html"), List.of(first.target(), second.target()));
		assertEquals(Optional.of(first), page.link(second.start(), false));
		assertEquals(Optional.empty(), page.link(second.start(), true));
		assertEquals("nothing\n", GuidePage.found("zzz", List.of(), "nothing").text());
	}

	@Test
	void anExcerptStandsAroundTheFirstWord() {
		Section section = new Section("a.html", "A", "A", "word ".repeat(60) + "needle " + "word ".repeat(60));
		String excerpt = GuideSearch.excerpt(section, "needle");
		assertTrue(excerpt.contains("needle") && excerpt.endsWith(" \u2026") && excerpt.length() < 170, excerpt);
	}

	@ParameterizedTest
	@CsvSource({ "'', saddle, plans.html#hours", "'', dialout, bench-mode.html#indicators", "de, Sattel, plans.html#hours" })
	void theGuideIsSearchedInItsOwnLanguage(String folder, String query, String target) throws IOException {
		GuideSearch guide = new GuideSearch(Files.readString(GUIDE.resolve(folder).resolve("words.js")));
		assertTrue(guide.find(query).stream().map(Section::target).toList().contains(target), guide.find(query).toString());
	}
}
