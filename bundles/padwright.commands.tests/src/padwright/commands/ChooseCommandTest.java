package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChooseCommandTest {

	/** Two cups of 17.5 mm and one of 10.5 mm; all invented. */
	private static final String SYSTEM = """
			system Trio {
				key F open hole 15 mm soldered cup 17.5 mm deep 3 mm
				key E open hole 15 mm soldered cup 17.5 mm deep 3 mm
				key Tr "D trill" closed hole 8 mm soldered cup 10.5 mm deep 3 mm
			}
			""";
	private static final String STOCK = """
			stock House {
				kind rigid { }
				kind felt { }
				kind foam { }
				kind metal { }
				prefer "flat" 3 when pad.kind is rigid
				avoid "wants a true cup" 4 when pad.kind is rigid and cup.found is warped
				prefer "quiet" 5 when pad.kind is foam and key.posture is closed
			}
			stock Bench with House {
				pad Hard "hard pad" { kind rigid thick 2 mm diameters 10.5*1 17.5*%s mm price 9 }
				pad Soft "soft pad" { kind felt thick 2 mm price 2 }
				pad Light "light pad" { kind foam thick 2 mm diameters 10.5 mm }
				pad Fat "fat pad" { kind felt thick 7 mm }
				rule "no metal here" error when pad.kind is metal
				pad Steel "steel pad" { kind metal }
			}
			""";

	@TempDir
	private Path folder;

	@BeforeEach
	void layOutTheShop() {
		CommandRun.write(folder, "padwright.shop", "");
		CommandRun.write(folder, "trio.keys", SYSTEM);
		stock("8");
	}

	private void stock(String large) {
		CommandRun.write(folder, "bench.stock", STOCK.formatted(large));
	}

	private Path plan(String rows) {
		return CommandRun.write(folder, "look.plan",
				"plan Look for Trio with Bench {\n\tread at 12 3 6 9\n" + rows + "\n}\n");
	}

	private static List<String> chosen(JsonObject choice) {
		List<String> pads = new ArrayList<>();
		for (JsonElement key : choice.getAsJsonArray("keys")) {
			JsonElement pad = key.getAsJsonObject().get("chosen");
			pads.add(pad == null || pad.isJsonNull() ? "-" : pad.getAsString());
		}
		return pads;
	}

	private JsonObject choose(String rows) {
		CommandRun run = CommandRun.padwright("choose", "--json", plan(rows));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return run.json();
	}

	@Test
	void keysThatDifferGetAnotherPad() {
		assertEquals(List.of("Hard", "Soft", "Light"), chosen(choose("key F\n key E warped\n key Tr")));
	}

	@Test
	void noPadIsGivenAwayTwice() {
		stock("1");
		assertEquals(List.of("Hard", "Soft", "Light"), chosen(choose("key F\n key E\n key Tr")));
	}

	@Test
	void aPadThatIsSoundStays() {
		assertEquals(List.of("Hard"), chosen(choose("key F found sound\n key E found worn")));
	}

	@Test
	void whatCannotGoInSaysWhy() {
		JsonObject key = choose("key F empty 15 15 15 15").getAsJsonArray("keys").get(0).getAsJsonObject();
		List<String> hindrances = new ArrayList<>();
		key.getAsJsonArray("candidates").forEach(each -> {
			JsonElement why = each.getAsJsonObject().get("hindrance");
			hindrances.add(each.getAsJsonObject().get("pad").getAsString() + (why == null ? "" : ": " + why.getAsString()));
		});
		assertEquals(List.of("Hard", "Soft", "Fat: too thick for the cup",
				"Light: no diameter in stock for the cup", "Steel: no metal here"), sortedByFit(hindrances));
	}

	/** Those that fit in their order, then the others by name. */
	private static List<String> sortedByFit(List<String> candidates) {
		List<String> sorted = new ArrayList<>(candidates.stream().filter(each -> !each.contains(":")).toList());
		candidates.stream().filter(each -> each.contains(":")).sorted().forEach(sorted::add);
		return sorted;
	}

	@Test
	void aShopThatWeighsOtherwiseChoosesOtherwise() throws Exception {
		Path stock = folder.resolve("bench.stock");
		Files.writeString(stock, Files.readString(stock).replace("\"flat\" 3", "\"flat\" 3.5").replace("cup\" 4", "cup\" 3"));
		assertEquals(List.of("Hard"), chosen(choose("key E warped")));
	}

	@Test
	void everyFigureHasItsWords() {
		CommandRun run = CommandRun.padwright("choose", plan("key F\n key E warped\n key Tr"));
		assertTrue(run.out().contains("for (3) flat\n"), run.out());
		assertTrue(run.out().contains("against (4) wants a true cup: E"), run.out());
		assertTrue(run.out().contains("E: cup warped. Press the cup true"), run.out());
		assertTrue(run.out().lines().noneMatch(line -> line.matches(".*\\) *")), run.out());
		assertFalse(run.showsItsInside());
	}

	@Test
	void aPlanWithoutStockIsUnusable() {
		CommandRun run = CommandRun.padwright("choose",
				CommandRun.write(folder, "bare.plan", "plan Bare for Trio {\n\tkey F\n}\n"));
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertTrue(run.err().contains("names no stock"), run.err());
	}
}
