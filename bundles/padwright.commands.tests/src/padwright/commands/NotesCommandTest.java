package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

class NotesCommandTest {

	private static final String SYSTEM = """
			unit mm
			system Vents "two vents" {
				joint head long 50
				joint body long 200
				joint foot
				touch Oct by T
				touch L3
				touch R1
				touch R4
				key Lever by Oct opens High
				key High "high vent" closed hole 3 cup 6 on head at 40
				key G by L3 holds High hole 12 cup 15 perforated 5 spring 30 grams at 150.5
				key Fs hole 13 cup 16 spring 25 grams at 180
				key F by R1 closes Fs ratio 0.5 play 0.2, G hole 14 cup 17 spring 20 grams at 199
				key Ds closed by R4 hole 12 cup 15 on foot at 12.25 around 30
				note F4 : L3 R1
				note G4 +50 cents "low" alternate : half L3 R4
				note G5 : Oct L3
				note A5 : Oct
				note B5 trill : R1
			}
			""";

	@TempDir
	private Path folder;

	@Test
	void namesWithBlanksAreToldApart() {
		String out = notes("""
				system Blanks {
					touch "low E" by R2
					touch L1
					key "upper plate" by L1 hole 8 mm cup 11 mm
					key E by "low E" hole 8 mm cup 11 mm
					note D5 : L1 "low E"
				}
				""").out();
		assertTrue(out.contains("L1 \"low E\"  \"upper plate\" E"), out);
	}

	@Test
	void programsGetOpenHolesFromTheHeadDown() {
		CommandRun run = notes(SYSTEM, "--json");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		JsonObject json = run.json();
		assertEquals("Vents", json.get("system").getAsString());
		assertEquals(5, json.get("pads").getAsInt());
		JsonArray notes = json.getAsJsonArray("notes");
		assertEquals("[{\"hole\":\"High\",\"joint\":\"head\",\"at\":-10,\"around\":0},"
				+ "{\"hole\":\"G\",\"joint\":\"body\",\"at\":150.5,\"around\":0},"
				+ "{\"hole\":\"Fs\",\"joint\":\"body\",\"at\":180,\"around\":0},"
				+ "{\"hole\":\"F\",\"joint\":\"body\",\"at\":199,\"around\":0}]", part(notes, 3, "open"));
		assertEquals("[]", part(notes, 0, "open"));
		assertEquals("[\"G\",\"Fs\",\"F\"]", part(notes, 0, "moved"));
		assertEquals("[{\"hole\":\"G\",\"joint\":\"body\",\"at\":150.5,\"around\":0}]", part(notes, 4, "halfOpen"));
	}

	private static String part(JsonArray notes, int note, String field) {
		return notes.get(note).getAsJsonObject().get(field).toString();
	}

	@Test
	void programsGetWhatIsWrittenOfAFingering() {
		JsonObject low = notes(SYSTEM, "--json").json().getAsJsonArray("notes").get(1).getAsJsonObject();
		assertEquals("G4", low.get("note").getAsString());
		assertEquals(50, low.get("cents").getAsInt());
		assertEquals("low", low.get("label").getAsString());
		assertEquals("alternate", low.get("purpose").getAsString());
		assertEquals("[\"R4\"]", low.get("touches").toString());
		assertEquals("[\"L3\"]", low.get("halfTouches").toString());
	}

	/** 20 + 0.5 · 25 + 30 grams, by hand. */
	@Test
	void programsGetWhatAFingerFeels() {
		JsonObject r1 = notes(SYSTEM, "--json").json().getAsJsonArray("touches").get(2).getAsJsonObject();
		assertEquals("R1", r1.get("touch").getAsString());
		assertEquals(62.5, r1.get("grams").getAsDouble());
		assertEquals("{\"G\":0,\"Fs\":0.2,\"F\":0}", r1.get("lostMotion").toString());
		assertEquals("[]", r1.get("unweighed").toString());
	}

	@Test
	void peopleGetATable() {
		CommandRun run = notes(SYSTEM);
		assertTrue(run.out().startsWith("pads: 5, holes: 5, fingerings: 5"), run.out());
		assertEquals("F4|usual|L3 R1|G Fs F|-|-", run.line("F4"));
		assertEquals("G4 +50|alternate|half L3 R4|G Ds|half G Fs F Ds|-", run.line("G4 +50"));
		assertEquals("G5|usual|Oct L3|Lever G|Fs F|held: High: Oct presses Lever, Lever opens High; but L3 presses G, "
				+ "G keeps High shut", run.line("G5"));
		assertEquals("B5|trill|R1|G Fs F|half G|-", run.line("B5"));
		assertEquals("R1|G Fs (0.2 mm) F|62.5|-", run.line("R1"));
		assertEquals("R4|Ds|-|Ds", run.line("R4"));
	}

	@Test
	void whatCannotBeIsTold() {
		CommandRun run = notes("""
				system Wrong {
					touch L4
					touch R1
					key Gs closed by L4
					key G by R1 closes Gs
					note F4 : L4 R1
				}
				""");
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertEquals("F4|usual|L4 R1|G|-|cannot be: Gs: L4 presses Gs; but R1 presses G, G closes Gs", run.line("F4"));
	}

	@Test
	void whatIsNoSystemIsToldInOneLine() {
		for (Object wrong : new Object[] { folder.resolve("missing.keys"), folder,
				CommandRun.write(folder, "two.keys", "system One { }\nsystem Two { }\n"),
				CommandRun.EXAMPLES.resolve("plans/first.plan") }) {
			CommandRun run = CommandRun.padwright("notes", wrong);
			assertEquals(ExitStatus.UNUSABLE, run.status(), wrong.toString());
			assertFalse(run.showsItsInside(), run.err());
		}
	}

	@Test
	void halfTypedSystemsAreBorne() {
		for (int length = 0; length < SYSTEM.length(); length += 7) {
			CommandRun run = notes(SYSTEM.substring(0, length), "--json");
			assertFalse(run.showsItsInside(), run.err());
		}
	}

	private CommandRun notes(String text, String... options) {
		Path file = CommandRun.write(folder, "vents.keys", text);
		return options.length == 0 ? CommandRun.padwright("notes", file)
				: CommandRun.padwright("notes", file, options[0]);
	}
}
