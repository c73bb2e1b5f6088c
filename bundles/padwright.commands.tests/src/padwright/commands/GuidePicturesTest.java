package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pictures of the guide are those that the commands draw from the examples today. */
class GuidePicturesTest {

	private static final Path PICTURES = GuidePages.FOLDER.resolve("pictures");
	private static final Path FRESH = Path.of("target", "fresh");

	@TempDir
	private Path folder;

	@ParameterizedTest
	@CsvSource({
			"card,     plans/first.plan,   First-bench-card-1.svg,   bench-card.svg",
			"film,     plans/first.plan,   First-film-1.svg,         film-sheet.svg",
			"handback, plans/first.plan,   First-hand-back-1.svg,    hand-back.svg",
			"sheet,    systems/boehm.keys, BoehmC-key-layout-1.svg,  key-layout.svg",
			"sound,    systems/boehm.keys, BoehmC-sound-1.svg,       sound.svg" })
	void aPictureIsUpToDate(String command, String from, String drawn, String picture) throws IOException {
		List<Object> words = new ArrayList<>(List.of(command, CommandRun.EXAMPLES.resolve(from), "-o", folder));
		if (command.equals("sound")) {
			words.add("--svg");
		}
		CommandRun run = CommandRun.padwright(words.toArray());
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		byte[] fresh = Files.readAllBytes(folder.resolve(drawn));
		Path published = PICTURES.resolve(picture);
		if (!Files.exists(published) || Files.mismatch(folder.resolve(drawn), published) >= 0) {
			Files.createDirectories(FRESH);
			Files.write(FRESH.resolve(picture), fresh);
		}
		assertArrayEquals(fresh, Files.readAllBytes(published), "look at " + FRESH.resolve(picture)
				+ ", and copy it over the picture of the guide");
	}

	@Test
	void everyPictureIsShown() throws IOException {
		String pages = GuidePages.all().stream().map(GuidePages::text).collect(Collectors.joining());
		try (var files = Files.list(PICTURES)) {
			assertEquals(Set.of(), files.map(file -> file.getFileName().toString())
					.filter(name -> !pages.contains("pictures/" + name)).collect(Collectors.toSet()));
		}
	}
}
