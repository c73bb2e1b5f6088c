package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What stands around the text of the pages, and what the search looks through, is what follows from the text. */
class GuideFrameTest {

	private static final Path FRESH = Path.of("target", "fresh", "guide");

	@Test
	void pagesAndSearchAreUpToDate() throws IOException {
		Files.createDirectories(FRESH);
		try (Stream<Path> earlier = Files.walk(FRESH)) {
			earlier.filter(Files::isRegularFile).forEach(file -> file.toFile().delete());
		}
		boolean same = true;
		for (GuideLanguage language : GuideLanguage.values()) {
			GuideFrame frame = new GuideFrame(language);
			same &= holds(language.folder().resolve(GuideWords.FILE), GuideWords.of(language));
			for (Path page : language.files()) {
				same &= holds(page, frame.framed(page));
			}
		}
		assertTrue(same, "look at " + FRESH + ", and copy all of it over the guide");
	}

	private static boolean holds(Path file, String fresh) throws IOException {
		if (Files.exists(file) && GuidePages.text(file).equals(fresh)) {
			return true;
		}
		Path copy = FRESH.resolve(GuidePages.FOLDER.relativize(file));
		Files.createDirectories(copy.getParent());
		Files.writeString(copy, fresh);
		return false;
	}

	@ParameterizedTest
	@EnumSource
	void theContentsNameEveryPageOnce(GuideLanguage language) {
		List<String> named = new GuideFrame(language).files();
		List<String> there = language.files().stream().map(page -> page.getFileName().toString()).toList();
		assertEquals(new HashSet<>(there), new HashSet<>(named));
		assertEquals(there.size(), named.size());
	}
}
