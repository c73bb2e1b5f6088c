package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class StockCommandTest {

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
		for (Path plan : ExampleShop.files(folder.resolve("plans"))) {
			if (!plan.equals(shop.plan("spring-service")) && !plan.equals(shop.plan("old-flute"))) {
				Files.delete(plan);
			}
		}
	}

	@Test
	void whatIsOnHandIsWhatIsTakenWantedAndLeft() {
		for (JsonObject line : articles().values()) {
			if (line.has("onHand")) {
				int left = line.get("onHand").getAsInt() - line.get("taken").getAsInt() - line.get("wouldTake").getAsInt();
				assertEquals(left, line.get("left").getAsInt());
				assertEquals(Math.max(0, -left), line.get("short").getAsInt());
			}
		}
	}

	/** An old flute and a well-made one: two sets of 16 pads, as the ladder of semitones down to C asks for. */
	@Test
	void everyKeyTakesOnePad() {
		assertEquals(2 * 16, pads(articles()));
	}

	private static int pads(Map<String, JsonObject> articles) {
		return articles.values().stream().filter(line -> line.get("label").getAsString().contains(" pad "))
				.mapToInt(line -> line.get("taken").getAsInt() + line.get("wouldTake").getAsInt()).sum();
	}

	@Test
	void writingMovesWhatWouldBeTakenToWhatIsTaken() {
		Map<String, JsonObject> before = articles();
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("solve", "--write", shop.plan("spring-service")).status());
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("solve", "--write", shop.plan("old-flute")).status());
		Map<String, JsonObject> after = articles();
		assertEquals(before.keySet(), after.keySet());
		after.forEach((article, line) -> {
			assertEquals(0, line.get("wouldTake").getAsInt(), article);
			assertEquals(before.get(article).get("left"), line.get("left"), article);
		});
	}

	@Test
	void whatIsShortIsReorderedAtItsExactPrice() throws IOException {
		Path stock = folder.resolve("stock/bench.stock");
		Files.writeString(stock, Files.readString(stock).replace("price 0.25", "price 0.1005"));
		CommandRun run = CommandRun.padwright("stock", folder);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		JsonObject json = JsonParser.parseString(CommandRun.padwright("stock", folder, "--json").out()).getAsJsonObject()
				.getAsJsonArray("stocks").get(0).getAsJsonObject();
		BigDecimal cost = BigDecimal.ZERO;
		for (JsonElement line : json.getAsJsonArray("articles")) {
			int missing = line.getAsJsonObject().get("short").getAsInt();
			if (missing > 0) {
				assertTrue(run.out().contains("short of " + missing), run.out());
				cost = cost.add(line.getAsJsonObject().get("price").getAsBigDecimal().multiply(BigDecimal.valueOf(missing)));
			}
		}
		assertTrue(cost.signum() > 0, "the two plans want more film than there is");
		assertEquals(cost, json.get("reorderCost").getAsBigDecimal());
		assertTrue(run.out().contains(cost.stripTrailingZeros().toPlainString()), run.out());
	}

	/** What nobody takes is only counted, so that a large stock does not hide what is wanted. */
	@Test
	void onlyWhatIsTakenIsListed() {
		List<String> untouched = articles().values().stream()
				.filter(line -> line.get("taken").getAsInt() + line.get("wouldTake").getAsInt() == 0)
				.map(line -> line.get("label").getAsString()).toList();
		assertFalse(untouched.isEmpty());
		String table = CommandRun.padwright("stock", folder).out();
		untouched.forEach(label -> assertFalse(table.contains(label), label));
		assertTrue(table.contains(untouched.size() + " more"), table);
	}

	@Test
	void aPlanWithErrorsIsNamedAndCountedAsFarAsItCanBe() throws IOException {
		Path plan = shop.plan("old-flute");
		Files.writeString(plan, Files.readString(plan).replaceFirst("\n\tkey ", "\n\tkey Nonsense empty 15\n\tkey "));
		CommandRun run = CommandRun.padwright("stock", folder, "--json");
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertTrue(run.err().contains("old-flute.plan has errors, see check"), run.err());
		assertEquals(2 * 16, pads(articles(run)));
	}

	@Test
	void aFolderWithoutAPlanIsUnusable() {
		CommandRun run = CommandRun.padwright("stock", folder.resolve("systems"));
		assertEquals(ExitStatus.UNUSABLE, run.status());
		assertFalse(run.showsItsInside(), run.err());
	}

	private Map<String, JsonObject> articles() {
		CommandRun run = CommandRun.padwright("stock", folder, "--json");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return articles(run);
	}

	private static Map<String, JsonObject> articles(CommandRun run) {
		Map<String, JsonObject> articles = new LinkedHashMap<>();
		JsonParser.parseString(run.out()).getAsJsonObject().getAsJsonArray("stocks").get(0).getAsJsonObject()
				.getAsJsonArray("articles").forEach(line -> articles.put(
						line.getAsJsonObject().get("label").getAsString(), line.getAsJsonObject()));
		return articles;
	}
}
