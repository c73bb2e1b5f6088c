package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandbackCommandTest {

	private static final List<String> JARGON = List.of("thou", "shim", "seat", "feeler", "spread", "backing",
			"coupl", "regulat", "saddle", "tilt", "rim ", "cup", " film", "H315");

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	@Test
	void saysInPlainWordsWhatWasDone() throws IOException {
		String words = words("old-flute", "OldFlute");
		for (String expected : List.of("16 pads were replaced", "3 torn pads: C♯, A♯, F", "woven felt pad", "foam pad",
				"Shellac", "wool felt, bladder skin", "allergic", "safety data sheets", "In a year", "saliva is hard")) {
			assertTrue(words.contains(expected), expected + " in " + words);
		}
		JARGON.forEach(jargon -> assertFalse(words.replace("without keys", "").contains(jargon), jargon));
	}

	@Test
	void speaksOfSalivaOnlyToWhomItConcernsAndOfSoundPadsAsKept() throws IOException {
		Path plan = shop.plan("spring-service");
		Files.writeString(plan, Files.readString(plan).replace("key Tr2 empty", "key Tr2 found sound empty"));
		String words = words("spring-service", "SpringService");
		assertFalse(words.contains("saliva is hard"));
		assertTrue(words.contains("15 pads were replaced") && words.contains("1 pad was sound and stayed"), words);
	}

	@Test
	void warnsUntilTheWorkIsNoted() {
		Path plan = shop.plan("spring-service");
		assertTrue(CommandRun.padwright("handback", plan, "-o", folder.resolve("out")).err().contains("Fs"));
		CommandRun.padwright("solve", "--write", plan);
		assertEquals("", CommandRun.padwright("handback", plan, "-o", folder.resolve("out")).err());
	}

	@Test
	void theSamePlanGivesTheSameBytes() throws IOException {
		words("old-flute", "OldFlute");
		byte[] once = Files.readAllBytes(folder.resolve("out/OldFlute-hand-back.pdf"));
		words("old-flute", "OldFlute");
		assertArrayEquals(once, Files.readAllBytes(folder.resolve("out/OldFlute-hand-back.pdf")));
	}

	/** All words of the first page, lines joined. */
	private String words(String plan, String name) throws IOException {
		CommandRun run = CommandRun.padwright("handback", shop.plan(plan), "-o", folder.resolve("out"));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return Files.readString(folder.resolve("out").resolve(name + "-hand-back-1.svg")).replaceAll("<[^>]*>", " ")
				.replaceAll("\\s+", " ");
	}
}
