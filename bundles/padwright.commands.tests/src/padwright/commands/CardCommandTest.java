package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardCommandTest {

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	@Test
	void aCardIsAPdfAndAnSvgForEachPage() throws IOException {
		CommandRun run = CommandRun.padwright("card", shop.plan("spring-service"), "-o", folder.resolve("cards"));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		for (String line : run.out().lines().toList()) {
			assertTrue(Files.size(Path.of(line)) > 10_000, line);
		}
		assertTrue(Files.readString(folder.resolve("cards/SpringService-bench-card-1.svg")).contains("F♯")
				|| Files.readString(folder.resolve("cards/SpringService-bench-card-2.svg")).contains("F♯"));
	}

	@Test
	void theSamePlanGivesTheSameBytes() throws IOException {
		Path first = folder.resolve("first");
		Path second = folder.resolve("second");
		CommandRun.padwright("card", shop.plan("old-flute"), "-o", first, "--paper", "Letter");
		CommandRun.padwright("card", shop.plan("old-flute"), "-o", second, "--paper", "Letter");
		for (Path file : ExampleShop.files(first)) {
			assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(second.resolve(file.getFileName())));
		}
	}

	@Test
	void anUnknownPaperIsUnusable() {
		CommandRun run = CommandRun.padwright("card", shop.plan("spring-service"), "--paper", "Foolscap");
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("Foolscap"), run.err());
	}
}
