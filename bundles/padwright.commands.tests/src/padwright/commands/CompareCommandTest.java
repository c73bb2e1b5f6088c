package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class CompareCommandTest {

	private static final String HEAD = "fit Felt on Disc with Clear read at 12 3 6 9\n";
	private static final String FS =
			"key Fs found worn empty 15 15 15 15 stack 7.5 7.5 felt . 0.5 . . shim 0.5 from 2 to 4\n";
	private static final String F = "key F found sound empty 15 15 15 15 stack 5 7.5 3 felt . . . . shim none\n";

	@TempDir
	private Path folder;
	private DemoShop shop;

	@BeforeEach
	void openTheShop() {
		shop = DemoShop.in(folder);
	}

	private CommandRun compare(String old, String current, Object... options) {
		Object[] arguments = new Object[3 + options.length];
		arguments[0] = "compare";
		arguments[1] = shop.plan("Old", HEAD + old);
		arguments[2] = shop.plan("New", HEAD + current);
		System.arraycopy(options, 0, arguments, 3, options.length);
		CommandRun run = CommandRun.padwright(arguments);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return run;
	}

	@Test
	void aPlanDoesNotDifferFromItsCopy() {
		assertEquals("--- Old\n+++ New\nunchanged: F♯, F\n", compare(FS + F, FS + F).out().replace("\r", ""));
	}

	@Test
	void theOrderOfFullShimsIsNoChange() {
		assertTrue(compare(F, F.replace("5 7.5 3", "7.5 3 5")).out().contains("unchanged: F"));
	}

	@Test
	void whatWasFeltAsDeliveredIsCompared() {
		String same = F.strip() + " delivered . . . .\n";
		assertTrue(compare(same, same).out().contains("unchanged: F"));
		String out = compare(same, F.strip() + " delivered . 1 . .\n").out();
		assertTrue(out.matches("(?s).*- level as delivered \\d+ %\n.*"), out);
		assertTrue(out.matches("(?s).*\\+ level as delivered (under )?\\d+ %\n.*"), out);
	}

	@Test
	void whatChangedIsToldWithByHowMuch() {
		String now = FS.replace("worn", "torn").replace("7.5 7.5", "7.5 5 2").replace("15 15 15 15", "15 15 15 16")
				.replace("0.5 from 2 to 4", "none");
		String out = compare(FS + F, now + F).out();
		for (String line : new String[] { "@@ F♯ @@", "- found worn", "+ found torn", "- empty cup, mean 15\n",
				"+ empty cup, mean 15.25 (0.25 thou wider)", "- full shims 7.5 + 7.5 = 15\n",
				"+ full shims 7.5 + 5 + 2 = 14.5 (0.5 thou less)", "- pieces 0.5 from 2 to 4", "+ pieces none",
				"unchanged: F" }) {
			assertTrue(out.contains(line), line + " in " + out);
		}
	}

	@Test
	void whatTheLaterServiceDoesNotSpeakOfIsNoChange() {
		assertTrue(compare(F, "key F felt . . . . shim none\n").out().contains("unchanged: F"));
		assertTrue(compare(F, "key F found torn\n").out().endsWith("@@ F @@\n- found sound\n+ found torn\n"));
	}

	@Test
	void keysOfOnePlanAloneAreNamed() {
		JsonObject json = JsonParser.parseString(compare(FS, F, "--json").out()).getAsJsonObject();
		assertEquals("F♯", json.getAsJsonArray("onlyOld").get(0).getAsString());
		assertEquals("F", json.getAsJsonArray("onlyNew").get(0).getAsString());
		assertTrue(json.get("sameInstrument").getAsBoolean());
	}

	@Test
	void swappingThePlansSwapsThenAndNow() {
		JsonObject forward = changes(FS, FS.replace("7.5 7.5", "7.5 5"));
		JsonObject backward = changes(FS.replace("7.5 7.5", "7.5 5"), FS);
		assertEquals(forward.get("then"), backward.get("now"));
		assertEquals(forward.get("now"), backward.get("then"));
		assertEquals("2.5 thou less", forward.get("by").getAsString());
		assertEquals("2.5 thou more", backward.get("by").getAsString());
	}

	private JsonObject changes(String old, String current) {
		return JsonParser.parseString(compare(old, current, "--json").out()).getAsJsonObject().getAsJsonArray("changed")
				.get(0).getAsJsonObject().getAsJsonArray("changes").get(0).getAsJsonObject();
	}

	@Test
	void whatIsNoPlanIsUnusable() {
		CommandRun run = CommandRun.padwright("compare", shop.plan("Old", HEAD + F), folder.resolve("missing.plan"));
		assertEquals(ExitStatus.UNUSABLE, run.status());
	}
}
