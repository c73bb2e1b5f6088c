package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import padwright.engine.acoustics.AirModel;
import padwright.engine.acoustics.BorePoint;
import padwright.engine.acoustics.Fingering;
import padwright.engine.acoustics.Hole;
import padwright.engine.acoustics.Impedance;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.Layout;
import padwright.engine.acoustics.SoundModel;

class SoundCommandTest {

	private static final Path TUBE = Path.of("../../examples/lab/four-hole-tube.keys");
	/** Read off by parabolas; see the class in whose folder they lie for where they were published. */
	private static final Path MEASURED = Path.of("../padwright.engine.tests/src/padwright/engine/acoustics",
			"measured-four-hole-tube.csv");
	private static final String SMALL = """
			unit mm
			system Small "two holes" {
				joint head long 100 bore 19 embouchure 12 by 10 chimney 5 at 50 cork 17
				joint body long 500 bore 19
				touch L1
				touch L2
				hole H1 8 chimney 3 by L1 at 300
				key K by L2 hole 12 chimney 3 cup 15 at 350
				note C4 : L1 L2
				note E4 : L1
				note F4 "fork" alternate : L2
				note H9 : L1
			}
			""";

	@TempDir
	private Path folder;

	/** Maxima within 9 cents, minima, which lie in the noise of the measurement, within 14. */
	@Test
	void theMeasuredTubeWithFourHolesIsMet() throws IOException {
		Map<String, List<double[]>> tables = new HashMap<>();
		int checked = 0;
		for (String line : Files.readAllLines(MEASURED).stream().skip(1).toList()) {
			String[] cells = line.split(",");
			boolean isMaximum = cells[1].equals("max");
			double found = extremum(tables.computeIfAbsent(cells[0], this::impedance), Double.parseDouble(cells[2]),
					isMaximum);
			assertEquals(0, 1200 * Math.log(found / Double.parseDouble(cells[2])) / Math.log(2), isMaximum ? 9 : 14, line);
			checked++;
		}
		assertTrue(checked > 30 && tables.size() >= 3, checked + " extrema of " + tables.keySet());
	}

	/** As 50 Hz to 4 kHz in steps of 1 Hz. */
	private List<double[]> impedance(String label) {
		Path file = folder.resolve(label + ".csv");
		CommandRun run = CommandRun.padwright("sound", TUBE, "--note", label, "--impedance", file, "--from", "50", "--to",
				"4000", "--step", "1");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		try {
			List<String> lines = Files.readAllLines(file);
			assertEquals("hz,re,im", lines.get(0));
			assertEquals(3952, lines.size());
			return lines.stream().skip(1).map(SoundCommandTest::numbers).toList();
		} catch (IOException missing) {
			throw new AssertionError(missing);
		}
	}

	private static double[] numbers(String line) {
		return Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray();
	}

	/** The nearest one to a frequency, by a parabola through three points. */
	private static double extremum(List<double[]> table, double near, boolean isMaximum) {
		double best = 0;
		for (int row = 1; row + 1 < table.size(); row++) {
			double left = level(table.get(row - 1), isMaximum);
			double here = level(table.get(row), isMaximum);
			double right = level(table.get(row + 1), isMaximum);
			if (here > left && here >= right) {
				double found = table.get(row)[0] + (left - right) / (2 * (left - 2 * here + right));
				best = Math.abs(found - near) < Math.abs(best - near) ? found : best;
			}
		}
		return best;
	}

	private static double level(double[] row, boolean isMaximum) {
		return (isMaximum ? 1 : -1) * Math.log(Math.hypot(row[1], row[2]));
	}

	/** The same sizes given to the engine by hand; density and speed of sound of dry air at 20 °C as published. */
	@Test
	void impedanceIsOverThatOfTheUpperEnd() {
		List<Hole> holes = List.of(hole("H1", 100, 3, 1.7), hole("H2", 130, 3.5, 1.3), hole("H3", 180, 3.5, 1.5),
				hole("H4", 240, 2.5, 1.4));
		Instrument tube = new Instrument(new Layout(List.of(new BorePoint(0, 0.004), new BorePoint(0.2875, 0.004)),
				Optional.empty(), holes), SoundModel.in(AirModel.CHAIGNE_KERGOMARD.at(20)));
		double[] row = impedance("xoxx").get(400);
		Impedance expected = tube.impedance(Fingering.closing(List.of("H1", "H3", "H4")), 450)
				.over(1.2046925976462561 * 343.3700171691432 / (Math.PI * 0.002 * 0.002));
		assertEquals(450, row[0]);
		assertEquals(expected.real(), row[1], 1e-12);
		assertEquals(expected.imaginary(), row[2], 1e-12);
	}

	private static Hole hole(String name, double place, double diameter, double chimney) {
		return new Hole(name, place / 1000, diameter / 1000, chimney / 1000, 0.001, Optional.empty());
	}

	@Test
	void stepsAreExact() throws IOException {
		Path file = folder.resolve("out.csv");
		CommandRun.padwright("sound", TUBE, "--note", "xxxo", "--impedance", file, "--from", "100", "--to", "101", "--step",
				"0.1");
		List<String> lines = Files.readAllLines(file);
		assertEquals(12, lines.size());
		assertTrue(lines.get(4).startsWith("100.3,"), lines.get(4));
		assertTrue(lines.get(11).startsWith("101.0,"), lines.get(11));
	}

	@Test
	void peopleGetATable() {
		CommandRun run = sound(SMALL);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertTrue(run.out().startsWith("Small: cents from equal temperament on A 440 Hz, with dry air of 20 °C"),
				run.out());
		assertTrue(run.line("C4").matches("C4\\|usual\\|261\\.63\\|[0-9.]+\\|[+-][0-9.]+\\|[+-][0-9.]+"), run.line("C4"));
		assertTrue(run.line("F4").startsWith("F4|alternate|349.23|"), run.line("F4"));
		assertTrue(run.line("1 ").startsWith("1|2|"), run.line("1 "));
		assertTrue(run.out().contains("A rise of 3 mm is assumed for K"), run.out());
		assertTrue(run.out().contains("H9: left out, H9 is no pitch"), run.out());
		assertFalse(run.out().contains("farther down"), "only where it is asked for");
	}

	/** A hole farther down, and a deeper one, sounds lower, a wider one higher; what lies below the open hole hardly counts. */
	@Test
	void holesTellWhatATenthOfAMillimetreDoes() {
		String out = sound(SMALL, "--holes").out();
		assertTrue(out.matches("(?s).*\\nK +farther down +E4 -[0-9.]+\\nK +wider +E4 \\+[0-9.]+\\nK +deeper +E4 -.*"),
				out);
	}

	@Test
	void programsGetAllOfIt() {
		JsonObject json = sound(SMALL, "--json", "--holes").json();
		assertEquals(440, json.get("pitch").getAsInt());
		assertEquals(20, json.get("temperature").getAsInt());
		JsonObject fork = json.getAsJsonArray("notes").get(2).getAsJsonObject();
		assertEquals("fork", fork.get("label").getAsString());
		assertEquals("alternate", fork.get("purpose").getAsString());
		assertEquals(349.228, fork.get("target").getAsDouble(), 1e-3);
		assertEquals(1200 * Math.log(fork.get("hertz").getAsDouble() / fork.get("target").getAsDouble()) / Math.log(2),
				fork.get("cents").getAsDouble(), 1e-6);
		assertEquals(2, json.getAsJsonArray("octaves").get(0).getAsJsonObject().get("notes").getAsInt());
		JsonObject wider = json.getAsJsonArray("holes").get(4).getAsJsonObject();
		assertEquals("K", wider.get("hole").getAsString());
		assertEquals("diameter", wider.get("measure").getAsString());
		assertTrue(wider.getAsJsonObject("cents").get("E4").getAsDouble() > 0.5, wider.toString());
		assertEquals("[{\"name\":\"H9\",\"why\":\"H9 is no pitch\"}]", json.get("leftOut").toString());
	}

	@Test
	void spreadsheetsGetTheNotes() {
		List<String> lines = sound(SMALL, "--csv").out().lines().toList();
		assertEquals(4, lines.size());
		assertEquals("name,purpose,octave,target (Hz),sounds (Hz),cents,height (dB),over next (dB)", lines.get(0));
		assertTrue(lines.get(3).startsWith("F4,alternate,1,349.22823143300"), lines.get(3));
	}

	@Test
	void whatIsMissingIsToldWithItsPlace() {
		Path file = CommandRun.write(folder, "small.keys", SMALL.replace(" chimney 3 cup", " cup").replace(" at 300", ""));
		CommandRun run = CommandRun.padwright("sound", file);
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("small.keys:7:2 error sound-size Hole H1 has no place: a pitch follows from where the "
				+ "holes are. Write at"), run.err());
		assertTrue(run.err().contains("small.keys:8:2 error sound-size Hole K has no chimney"), run.err());
		assertTrue(run.err().contains("small.keys does not say all that sound needs of Small: see above"), run.err());
	}

	@Test
	void wrongOptionsAreToldInOneLine() {
		Path out = folder.resolve("x.csv");
		for (Object[] wrong : new Object[][] { { "--note", "xxxx" }, { "--impedance", out },
				{ "--note", "ooox", "--impedance", out }, { "--note", "xxxx", "--impedance", out, "--from", "0" },
				{ "--note", "xxxx", "--impedance", out, "--from", "500", "--to", "400" },
				{ "--note", "xxxx", "--impedance", out, "--step", "0" },
				{ "--note", "xxxx", "--impedance", out, "--step", "0.000001" },
				{ "--note", "xxxx", "--impedance", out, "--to", "30000" } }) {
			List<Object> words = new ArrayList<>(List.of("sound", TUBE));
			words.addAll(List.of(wrong));
			CommandRun run = CommandRun.padwright(words.toArray());
			assertEquals(ExitStatus.UNUSABLE, run.status(), words.toString());
			assertEquals(1, run.err().lines().count(), run.err());
			assertFalse(run.showsItsInside(), run.err());
			assertFalse(Files.exists(out));
		}
	}

	private CommandRun sound(String text, String... options) {
		Path file = CommandRun.write(folder, "small.keys", text);
		List<Object> words = new ArrayList<>(List.of("sound", file));
		words.addAll(List.of(options));
		return CommandRun.padwright(words.toArray());
	}

	/** Every pad as it is, and one at several rises; what 3 mm do is the same in both. */
	@Test
	void whatRaisedPadsDoIsTold() {
		Path file = CommandRun.write(folder, "small.keys", SMALL);
		CommandRun all = CommandRun.padwright("sound", file, "--venting");
		assertEquals(ExitStatus.CLEAN, all.status(), all.err());
		assertTrue(all.line("K").matches("K[|]3[.]0[|].*"), all.out());
		assertTrue(all.out().contains("A rise of 3 mm is assumed for K"), all.out());
		JsonObject pad = CommandRun.padwright("sound", file, "--venting", "--json").json().getAsJsonArray("keys").get(0)
				.getAsJsonObject();
		assertEquals("K", pad.get("key").getAsString());
		double cents = pad.getAsJsonArray("notes").get(0).getAsJsonObject().get("cents").getAsDouble();
		assertTrue(cents < -1 && pad.get("enough").getAsDouble() > 3, pad.toString());
		CommandRun one = CommandRun.padwright("sound", file, "--venting", "--key", "K", "--json");
		double last = Double.NEGATIVE_INFINITY;
		for (JsonElement rise : one.json().getAsJsonArray("rises")) {
			double there = rise.getAsJsonObject().getAsJsonArray("notes").get(0).getAsJsonObject().get("cents")
					.getAsDouble();
			assertTrue(there > last, "higher is sharper");
			last = there;
			if (rise.getAsJsonObject().get("rise").getAsDouble() == 3) {
				assertEquals(cents, there, 1e-9);
			}
		}
		assertTrue(CommandRun.padwright("sound", file, "--venting", "--key", "K").line("E4").startsWith("E4"));
	}

	@Test
	void aPadThatNoNoteOpensIsRefused() {
		Path file = CommandRun.write(folder, "small.keys", SMALL);
		for (String[] wrong : new String[][] { { "--key", "K" }, { "--venting", "--key", "Gone" } }) {
			CommandRun run = CommandRun.padwright("sound", file, wrong[0], wrong[1], wrong.length > 2 ? wrong[2] : "--json");
			assertEquals(ExitStatus.UNUSABLE, run.status(), run.err());
			assertFalse(run.showsItsInside(), run.err());
		}
	}
}
