package padwright.commands;

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

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class SolveCommandTest {

	private static final Pattern ANSWERS =
			Pattern.compile(" stack [0-9. ]*[0-9]| shim (none|[0-9.]+ from [0-9.]+ to [0-9.]+(, )?)+");

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	@Test
	void everyKeyOfAStandardSetIsSolved() {
		CommandRun run = CommandRun.padwright("solve", "--json", shop.plan("spring-service"));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		JsonObject json = JsonParser.parseString(run.out()).getAsJsonObject();
		assertEquals("SpringService", json.get("plan").getAsString());
		assertEquals(0.5, json.get("tolerance").getAsDouble());
		// A flute with closed G♯ and C foot has a pad for each semitone up to the D♯ trill, and two for G♯.
		assertEquals(16, json.getAsJsonArray("keys").size());
		json.getAsJsonArray("keys").forEach(key -> assertSolved(key.getAsJsonObject()));
	}

	private static void assertSolved(JsonObject key) {
		assertEquals(24, key.getAsJsonArray("gap").size());
		double chance = key.get("chance").getAsDouble();
		assertTrue(chance >= 0 && chance <= 1, key.toString());
		JsonObject height = key.getAsJsonObject("height");
		double sum = 0;
		for (JsonElement piece : height.getAsJsonArray("pieces")) {
			sum += piece.getAsDouble();
		}
		assertEquals(height.get("target").getAsDouble() + height.get("error").getAsDouble(), sum, 1e-6);
	}

	@Test
	void writingTouchesNothingButAnswersAndKeepsTheOldText() throws IOException {
		Path plan = shop.plan("spring-service");
		String before = Files.readString(plan);
		CommandRun run = CommandRun.padwright("solve", "--write", plan);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		String after = Files.readString(plan);
		assertEquals(before, ANSWERS.matcher(after).replaceAll(""));
		assertFalse(before.equals(after));
		assertEquals(before, Files.readString(plan.resolveSibling("spring-service.plan.bak")));
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("check", plan).status());
	}

	@Test
	void writingAgainWritesNothing() throws IOException {
		Path plan = shop.plan("old-flute");
		CommandRun.padwright("solve", "--write", plan);
		String once = Files.readString(plan);
		CommandRun.padwright("solve", "--write", plan);
		assertEquals(once, Files.readString(plan));
	}

	@Test
	void writtenPiecesStayUnlessTheyAreToBeReplaced() throws IOException {
		Path plan = shop.plan("spring-service");
		Files.writeString(plan, Files.readString(plan).replace("felt . 0.5 1 0.5", "felt . 0.5 1 0.5 shim 3 from 1 to 2"));
		CommandRun.padwright("solve", "--write", plan);
		assertTrue(Files.readString(plan).contains("shim 3 from 1 to 2"));
		CommandRun.padwright("solve", "--write", "--replace", plan);
		assertFalse(Files.readString(plan).contains("shim 3 from 1 to 2"));
	}

	@Test
	void aPlanWithErrorsSaysWhyAKeyWasNotSolved() {
		CommandRun run = CommandRun.padwright("solve", shop.plan("student-flute"));
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.out().contains("not solved"), run.out());
		assertTrue(run.err().contains("student-flute.plan:"), run.err());
	}

	@Test
	void whatIsNoPlanIsUnusable() {
		for (Path file : new Path[] { folder.resolve("systems/boehm.keys"), folder.resolve("missing.plan"), folder }) {
			CommandRun run = CommandRun.padwright("solve", file);
			assertEquals(ExitStatus.UNUSABLE, run.status(), run.out());
			assertFalse(run.showsItsInside(), run.err());
		}
	}
}
