package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

class HistoryCommandTest {

	@TempDir
	private Path folder;

	@BeforeEach
	void shop() {
		DemoShop shop = DemoShop.in(folder);
		shop.plan("One", "date 2024-03-01 player \"P-1\" { } fit Felt read at 12 3 6 9 key Fs felt . . . . key E");
		shop.plan("Two", "date 2025-03-01 player \"P-1\" { } fit Felt read at 12 3 6 9\n"
				+ "key Fs felt 2 1 . 1 shim 2 from 3 to 5 felt 2 1 . 1 shim none");
		shop.plan("Undated", "player \"P-1\" { } key Fs");
	}

	@Test
	void theTableTellsOfKeysPlayersAndPads() {
		CommandRun run = CommandRun.padwright("history", folder, "--on", "2026-06-01");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertEquals("X-1 of P-1, serviced 2024-03-01 2025-03-01", run.line("X-1"));
		assertTrue(run.line("F♯").startsWith("F♯|2024-03-01|2|-|2025 opened by about "), run.line("F♯"));
		assertEquals("pads in one service, not found torn: E", run.line("pads in one service"));
		assertTrue(run.line("P-1").startsWith("P-1|2026-03-01|past|"), run.line("P-1"));
		assertTrue(run.line("Felt").startsWith("Felt|1|1|"), run.line("Felt"));
		assertEquals("Undated: left out, it has no date", run.line("Undated"));
	}

	@Test
	void programsGetAllOfIt() {
		JsonObject json = CommandRun.padwright("history", folder, "--on", "2026-06-01", "--json").json();
		JsonObject instrument = json.getAsJsonArray("instruments").get(0).getAsJsonObject();
		assertEquals("X-1", instrument.get("instrument").getAsString());
		JsonObject key = instrument.getAsJsonArray("keys").get(0).getAsJsonObject();
		assertEquals("F♯", key.get("key").getAsString());
		JsonObject moved = key.getAsJsonArray("moved").get(0).getAsJsonObject();
		assertEquals("opened", moved.get("kind").getAsString());
		assertEquals("2024-03-01", moved.get("left").getAsString());
		assertEquals("2026-06-01", json.getAsJsonObject("forecast").get("on").getAsString());
		assertEquals("Bench.Felt",
				json.getAsJsonArray("calibration").get(0).getAsJsonObject().get("pad").getAsString());
	}

	@Test
	void aFolderWithoutPlansIsRefused() {
		CommandRun.write(folder.resolve("empty"), "notes.txt", "no plan");
		CommandRun run = CommandRun.padwright("history", folder.resolve("empty"));
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("holds no plan"), run.err());
	}
}
