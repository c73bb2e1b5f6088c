package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;

class SoundFitTest {

	private static final Path SYSTEMS = CommandRun.EXAMPLES.resolve("systems");
	private static final String BASE = """
			unit mm
			system Base {
				joint head long 100 bore 19 embouchure 12 by 10 chimney 5 at 50 cork 17
				joint body long 480 bore 19
				touch L1
				touch "Side key"
				hole H1 8 chimney 3 by L1 at 320 // stays
				key K by "Side key" hole 12.5 mm chimney 3 cup 16 rise 3 at 400
				note D4 : L1 "Side key"
				note E4 : L1
				note F4 :
			}
			""";

	@TempDir
	private Path folder;

	/** The shipped flutes in the first two octaves: within 30 cents as they are, within 5 once fitted. */
	@ParameterizedTest
	@ValueSource(strings = { "boehm", "boehm-b-foot", "piccolo", "alto", "bass", "student", "open-hole" })
	void shippedFlutesAreNearAndComeInTune(String name) throws IOException {
		Path system = SYSTEMS.resolve(name + ".keys");
		String text = Files.readString(system);
		CommandRun run = CommandRun.padwright("sound", system, "--fit", "--json");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertTrue(farthest(run.json().getAsJsonArray("before")) < 30, run.out());
		assertTrue(farthest(run.json().getAsJsonArray("after")) < 5, run.out());
		assertEquals(text, Files.readString(system), "only proposed");
	}

	private static double farthest(JsonArray notes) {
		return StreamSupport.stream(notes.spliterator(), false).map(JsonElement::getAsJsonObject)
				.filter(note -> note.get("octave").getAsInt() <= 2 && note.get("purpose").getAsString().equals("usual"))
				.mapToDouble(note -> Math.abs(note.get("cents").getAsDouble())).max().orElseThrow();
	}

	/** What the copy says is what was promised, to the last digit. */
	@Test
	void theTextIsWrittenToACopy() throws IOException {
		Path file = CommandRun.write(folder, "base.keys", BASE);
		Path copy = folder.resolve("copy").resolve("fitted.keys");
		Files.createDirectories(copy.getParent());
		CommandRun run = CommandRun.padwright("sound", file, "--fit", "--json", "--octaves", "1", "--move", "20", "--write",
				copy);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertTrue(run.err().startsWith("wrote the text with these changes to "), run.err());
		assertEquals(BASE, Files.readString(file));
		String text = Files.readString(copy);
		assertTrue(text.contains(" chimney 3 by L1 at 3") && text.contains(" // stays"), text);
		assertTrue(text.matches("(?s).*hole 12[.][0-9]+ mm chimney.*"), "in the unit that was written: " + text);
		assertEquals(run.json().getAsJsonArray("after"),
				CommandRun.padwright("sound", copy, "--json").json().getAsJsonArray("notes"));
	}

	/** Measured to the end of its joint, the bore ends with it; inherited, it is said whole, since it cannot be said in part. */
	@Test
	void aBoreThatIsMeasuredToTheEndGoesWithIt() {
		String tapered = BASE.replace("long 480 bore 19", "long 480 bore 19 at 0, 18 at 480");
		Path file = CommandRun.write(folder, "base.keys", tapered);
		Path heir = CommandRun.write(folder, "heir.keys", "unit mm\nsystem Heir based on Base {\n}\n");
		assertTrue(fitted(file).stream().anyMatch(line -> line.matches(
				"[+]\tjoint body long ([0-9.]+) bore 19 at 0, 18 at \\1")), String.join("\n", fitted(file)));
		assertTrue(fitted(heir).stream().anyMatch(line -> line.matches(
				"[+]\tchange joint body long ([0-9.]+) bore 19 at 0, 18 at \\1")), String.join("\n", fitted(heir)));
	}

	/** A piece of bore just above the end is shortened no further than to a tenth of a millimetre. */
	@Test
	void theEndStaysBelowTheLastPlaceThatIsMeasured() {
		Path file = CommandRun.write(folder, "base.keys",
				BASE.replace("long 480 bore 19", "long 500 bore 19 at 0, 18.1 at 499.5, 18 at 500"));
		assertTrue(fitted(file).stream().anyMatch(line -> line.contains("18.1 at 499.5, 18 at 499.6")),
				String.join("\n", fitted(file)));
	}

	private static List<String> fitted(Path file) {
		CommandRun run = CommandRun.padwright("sound", file, "--fit", "--octaves", "1", "--move", "20");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return run.out().lines().toList();
	}

	/** A unified diff with line numbers, and the caution. */
	@Test
	void peopleGetTheLinesToChange() {
		Path file = CommandRun.write(folder, "base.keys", BASE);
		CommandRun run = CommandRun.padwright("sound", file, "--fit", "--octaves", "1", "--move", "20");
		assertTrue(run.out().contains("not for an instrument in service: metal is not taken off"), run.out());
		List<String> lines = run.out().lines().toList();
		int hunk = lines.indexOf("@@ -8,1 +8,1 @@");
		assertEquals("-\tkey K by \"Side key\" hole 12.5 mm chimney 3 cup 16 rise 3 at 400", lines.get(hunk + 1));
		assertTrue(lines.get(hunk + 2).startsWith("+\tkey K by \"Side key\" hole 12."), lines.get(hunk + 2));
		String[] note = run.line("F4").split("[|]");
		assertTrue(Math.abs(Double.parseDouble(note[3])) < Math.abs(Double.parseDouble(note[2])), run.line("F4"));
	}

	/** What a system inherits is changed in its own text, never in that of its base. */
	@Test
	void inheritedSizesAreChangedAtTheEndOfTheSystem() throws IOException {
		CommandRun.write(folder, "base.keys", BASE);
		Path file = CommandRun.write(folder, "mine.keys", "unit mm\nsystem Mine based on Base {\n\tpitch 430 Hz\n}\n");
		Path copy = folder.resolve("mine.txt");
		CommandRun run = CommandRun.padwright("sound", file, "--fit", "--octaves", "1", "--move", "20", "--write", copy);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		String text = Files.readString(copy);
		assertTrue(text.matches("(?s)unit mm\\nsystem Mine based on Base \\{\\n\\tpitch 430 Hz\\n"
				+ "(\\tchange [^\\n]+\\n)+\\}\\n"), text);
		assertTrue(text.matches("(?s).*\\tchange K hole [0-9.]+ at [0-9.]+\\n.*"), text);
		assertTrue(text.contains("\tchange hole H1 ") && text.contains("\tchange joint body long "), text);
		assertTrue(run.out().contains("@@ -3,0 +4,3 @@\n+\tchange "), run.out());
	}

	/** A text whose lines end as Windows ends them keeps that, in the lines that are added too. */
	@Test
	void linesEndAsTheyDid() throws IOException {
		CommandRun.write(folder, "base.keys", BASE);
		Path file = CommandRun.write(folder, "mine.keys",
				"unit mm\r\nsystem Mine based on Base {\r\n\tpitch 430 Hz\r\n}\r\n");
		Path copy = folder.resolve("mine.txt");
		CommandRun run = CommandRun.padwright("sound", file, "--fit", "--octaves", "1", "--move", "20", "--write", copy);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		String text = Files.readString(copy);
		assertTrue(text.contains("\tchange K hole ") && !text.replace("\r\n", "").contains("\n"), text);
		assertTrue(run.out().contains("@@ -3,0 +4,3 @@") && !run.out().contains("\r"), run.out());
		Path own = CommandRun.write(folder, "own.keys", BASE.replace("\n", "\r\n"));
		CommandRun.padwright("sound", own, "--fit", "--octaves", "1", "--move", "20", "--write", copy);
		assertFalse(Files.readString(copy).replace("\r\n", "").contains("\n"));
	}

	/** Cups that lie one behind the other never come to overlap, whatever room is given. */
	@Test
	void cupsKeepClear() throws IOException {
		Path file = CommandRun.write(folder, "close.keys", """
				unit mm
				system Close {
					joint head long 100 bore 19 embouchure 12 by 10 chimney 5 at 50 cork 17
					joint body long 480 bore 19
					touch L1
					touch L2
					key A by L1 hole 12 chimney 3 cup 16 rise 3 at 358
					key B by L2 hole 12 chimney 3 cup 16 rise 3 at 378
					note D4 : L1 L2
					note F4 : L1
					note F4 +5 cents :
				}
				""");
		Path copy = folder.resolve("clear.keys");
		CommandRun run = CommandRun.padwright("sound", file, "--fit", "--octaves", "1", "--move", "30", "--write", copy);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		Matcher places = Pattern.compile("key [AB].* at ([0-9.]+)").matcher(Files.readString(copy));
		assertTrue(places.find());
		double upper = Double.parseDouble(places.group(1));
		assertTrue(places.find());
		double apart = Double.parseDouble(places.group(1)) - upper;
		assertTrue(apart >= 16 - 0.02 && apart < 19, "cups " + apart + " mm apart");
	}

	@Test
	void wrongOptionsAreToldInOneLine() throws IOException {
		Path file = CommandRun.write(folder, "base.keys", BASE);
		for (String[] wrong : new String[][] { { "--write", "x.keys" }, { "--fit", "--move", "-1" },
				{ "--fit", "--move", "0", "--widen", "0" }, { "--fit", "--octaves", "0" },
				{ "--fit", "--write", file.toString() } }) {
			CommandRun run = CommandRun.padwright(Stream
					.concat(Stream.of("sound", file), Arrays.stream(wrong)).toArray());
			assertEquals(ExitStatus.UNUSABLE, run.status(), List.of(wrong) + run.err());
			assertFalse(run.showsItsInside(), run.err());
			assertEquals(BASE, Files.readString(file));
		}
	}
}
