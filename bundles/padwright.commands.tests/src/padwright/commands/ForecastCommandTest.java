package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

import padwright.engine.forecast.TearForecast;
import padwright.engine.forecast.TearRate;
import padwright.engine.forecast.TornPads;

class ForecastCommandTest {

	@TempDir
	private Path folder;
	private DemoShop shop;

	@BeforeEach
	void shop() {
		shop = DemoShop.in(folder);
		shop.plan("Older", "date 2016-03-01 player \"P-1\" { saliva acidic } fit Felt key F found torn key Fs");
		shop.plan("Newer", "date 2017-03-01 player \"P-1\" { } fit Felt key F found torn");
		shop.plan("Undated", "player \"P-2\" { } key F found torn");
	}

	@Test
	void programsGetWhatTheEngineSays() {
		JsonObject json = CommandRun.padwright("forecast", folder, "--on", "2026-02-01", "--json").json();
		TearRate rate = TearRate.ACID_SALIVA.after(List.of(new TornPads(1, 365 / 365.25)));
		TearForecast engine = rate.forecast(1, 0.9);
		JsonObject player = json.getAsJsonArray("players").get(0).getAsJsonObject();
		assertEquals("P-1", player.get("player").getAsString());
		assertEquals("[\"2016-03-01\",\"2017-03-01\"]", player.getAsJsonArray("services").toString());
		assertEquals(engine.expected(), player.get("expected").getAsDouble());
		assertEquals(engine.low(), player.get("low").getAsInt());
		assertEquals(engine.high(), player.get("high").getAsInt());
		JsonObject aged = json.getAsJsonArray("aged").get(0).getAsJsonObject();
		assertEquals("[\"F♯\"]", aged.getAsJsonArray("keys").toString());
		assertEquals("2026-03-01", aged.get("due").getAsString());
		assertFalse(aged.get("overdue").getAsBoolean());
	}

	@Test
	void theTableTellsPlayersAgesAndWhatIsLeftOut() {
		CommandRun run = CommandRun.padwright("forecast", folder, "--on", "2026-02-01");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertTrue(run.line("P-1").startsWith("P-1|acidic|1|2|1.0|1|1|"), run.line("P-1"));
		assertTrue(run.line("P-1").endsWith("|2018-03-01"), run.line("P-1"));
		assertEquals("X-1|P-1|felt|2016-03-01|2026-03-01|in 28 days|F♯", run.line("X-1"));
		assertTrue(run.out().contains("Undated: left out, it has no date"), run.out());
	}

	@Test
	void anUnreadableFileIsLeftOutAndTold() {
		CommandRun.write(folder, "binary.plan", "\0\0");
		CommandRun run = CommandRun.padwright("forecast", folder, "--on", "2026-02-01");
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.err().contains("binary.plan"), run.err());
		assertTrue(run.line("P-1").startsWith("P-1|acidic|"), run.out());
	}

	@Test
	void whatCannotBeUsedIsSaid() {
		assertRefused("holds no plan", folder.resolve("empty"), "2026-02-01");
		assertRefused("does not exist", folder.resolve("none"), "2026-02-01");
		assertRefused("'May' is not a day such as 2026-03-02", folder, "May");
	}

	private void assertRefused(String message, Path given, String day) {
		CommandRun.write(folder.resolve("empty"), "notes.txt", "no plan");
		CommandRun run = CommandRun.padwright("forecast", given, "--on", day);
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertEquals("", run.out());
		assertTrue(run.err().contains(message), run.err());
	}
}
