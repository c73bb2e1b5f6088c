package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonParser;

class FilmCommandTest {

	private static final Pattern PARTIAL = Pattern.compile("([0-9]+) partial piece");

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	@Test
	void countsAsManyPiecesAsTheSolutionHas() throws IOException {
		Path plan = shop.plan("old-flute");
		int pieces = 0;
		for (var key : JsonParser.parseString(CommandRun.padwright("solve", "--json", plan).out()).getAsJsonObject()
				.getAsJsonArray("keys")) {
			pieces += key.getAsJsonObject().getAsJsonArray("pieces").size();
		}
		assertEquals(pieces, partialPieces(sheet(plan, "first")));
		CommandRun.padwright("solve", "--write", plan);
		assertEquals(pieces, partialPieces(sheet(plan, "second")), "pieces that the plan notes are the same");
	}

	private static int partialPieces(String svg) {
		return PARTIAL.matcher(svg).results().mapToInt(count -> Integer.parseInt(count.group(1))).sum();
	}

	private String sheet(Path plan, String to) throws IOException {
		CommandRun run = CommandRun.padwright("film", plan, "-o", folder.resolve(to));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return Files.readString(folder.resolve(to).resolve("OldFlute-film-1.svg"));
	}

	@Test
	void theSamePlanGivesTheSameBytes() throws IOException {
		for (String to : new String[] { "first", "second" }) {
			CommandRun.padwright("film", shop.plan("spring-service"), "-o", folder.resolve(to), "--paper", "Letter");
		}
		for (Path file : ExampleShop.files(folder.resolve("first"))) {
			assertArrayEquals(Files.readAllBytes(file),
					Files.readAllBytes(folder.resolve("second").resolve(file.getFileName())));
		}
	}

	@Test
	void aPlanWithErrorsIsDrawnAsFarAsItGoes() {
		CommandRun run = CommandRun.padwright("film", shop.plan("student-flute"), "-o", folder.resolve("out"));
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertFalse(run.showsItsInside(), run.err());
		assertTrue(Files.exists(folder.resolve("out/StudentFlute-film.pdf")));
	}
}
