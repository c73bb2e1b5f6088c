package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetCommandTest {

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	@Test
	void everyExampleSystemIsDrawnAlikeEveryTime() throws IOException {
		for (Path file : ExampleShop.files(folder.resolve("systems"))) {
			assertEquals(ExitStatus.CLEAN, sheet(file, "first").status(), file.toString());
			assertEquals(ExitStatus.CLEAN, sheet(file, "second").status(), file.toString());
		}
		for (Path file : ExampleShop.files(folder.resolve("first"))) {
			assertArrayEquals(Files.readAllBytes(file),
					Files.readAllBytes(folder.resolve("second").resolve(file.getFileName())));
		}
		assertTrue(Files.readString(folder.resolve("first/QuarterTone-key-layout-1.svg")).contains("revision 7"));
	}

	/** By the numbers that stand in the drawing and in the table of couplings. */
	@Test
	void partsSayWhichCouplingsTheyAreFor() throws IOException {
		CommandRun.padwright("sheet", folder.resolve("systems/boehm.keys"), "-o", folder.resolve("parts"));
		String said = PageWords.in(folder.resolve("parts")).replace("\n", " ");
		assertTrue(said.contains("5 adjuster screw UNM 1.00 couplings 1, 2, 3, 4, 5"), said);
		assertTrue(said.contains("1 adjuster cork coupling 7"), said);
	}

	/** In life size: the lower G's cup of 17 mm and its hole of 13 mm. */
	@Test
	void drawingProgramsGetTheInstrumentInLifeSize() throws IOException {
		CommandRun run = CommandRun.padwright("sheet", folder.resolve("systems/boehm.keys"), "-o", folder.resolve("dxf"), "--dxf");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertTrue(run.out().contains("BoehmC-key-layout.dxf"), run.out());
		String drawing = Files.readString(folder.resolve("dxf/BoehmC-key-layout.dxf"));
		assertTrue(drawing.contains("\n40\n8.5\n") && drawing.contains("\n40\n6.5\n"));
		assertTrue(drawing.contains("\n2\nSECTION\n") && drawing.contains("\n2\nSIDE\n") && drawing.contains("\n2\nMAP\n"));
	}

	private CommandRun sheet(Object system, String to) {
		return CommandRun.padwright("sheet", system, "-o", folder.resolve(to), "--revision", "7", "--date", "May 2026");
	}

	@Test
	void aFileWithSeveralSystemsAsksWhich() throws IOException {
		Path file = folder.resolve("systems/two.keys");
		Files.writeString(file, "system One { key X open hole 7 mm cup 9 mm at 10 mm }\nsystem Two { }\n");
		assertEquals(ExitStatus.CLEAN, sheet(file + "#One", "out").status());
		assertTrue(sheet(file, "out").err().contains("#One"));
		for (Object wrong : new Object[] { file, file + "#Three", file + "#Two", folder.resolve("missing.keys"), folder,
				shop.plan("old-flute") }) {
			CommandRun run = sheet(wrong, "out");
			assertEquals(ExitStatus.UNUSABLE, run.status(), wrong.toString());
			assertFalse(run.showsItsInside(), run.err());
		}
	}

	@Test
	void anInstrumentWithFingerHolesAloneIsDrawn() throws IOException {
		Path file = folder.resolve("systems/whistle.keys");
		Files.writeString(file, """
				system Whistle {
					joint body long 250 mm bore 12 mm
					touch L1
					touch L2
					hole First "first hole" 6 mm by L1 at 120 mm
					hole Second 7 mm by L2 at 150 mm
					note D5 : L1 L2
					note F5 : L1
				}
				""");
		CommandRun run = sheet(file, "out");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertTrue(Files.readString(folder.resolve("out/Whistle-key-layout-1.svg")).contains("First first hole · L1"));
	}

	@Test
	void keysThatCloseEachOtherInACircleAreNamed() throws IOException {
		Path file = folder.resolve("systems/circle.keys");
		Files.writeString(file, """
				system Circle {
					touch X
					key X open by X closes Y cup 9 mm
					key Y open closes X cup 9 mm
					note D4 : X
				}
				""");
		CommandRun run = sheet(file, "out");
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("X") && !run.showsItsInside(), run.err());
	}
}
