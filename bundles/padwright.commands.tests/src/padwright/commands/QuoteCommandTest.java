package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class QuoteCommandTest {

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	/** As in the invented stock: 16 pads at 14.00, 16 discs at 1.20, glue for 16 cups at 0.15, film at 0.25 a blank. */
	@Test
	void costsWhatTheSolutionTakes() {
		int blanks = 0;
		CommandRun solved = CommandRun.padwright("solve", "--json", shop.plan("spring-service"));
		for (JsonElement key : JsonParser.parseString(solved.out()).getAsJsonObject().getAsJsonArray("keys")) {
			blanks += key.getAsJsonObject().getAsJsonArray("pieces").size()
					+ key.getAsJsonObject().getAsJsonObject("height").getAsJsonArray("pieces").size();
		}
		JsonObject quote = quote("--minutes", "200", "--rate", "61.50", "--tax", "7.7");
		BigDecimal parts = new BigDecimal("15.35").multiply(BigDecimal.valueOf(16))
				.add(new BigDecimal("0.25").multiply(BigDecimal.valueOf(blanks)));
		assertEquals(parts, quote.get("parts").getAsBigDecimal());
		assertEquals(new BigDecimal("205.00"), quote.get("labour").getAsBigDecimal());
		assertEquals(parts.add(new BigDecimal("205.00")), quote.get("net").getAsBigDecimal());
		assertEquals(quote.get("total").getAsBigDecimal(),
				quote.get("net").getAsBigDecimal().add(quote.get("tax").getAsBigDecimal()));
	}

	@Test
	void whatHasNoPriceIsNamed() throws IOException {
		Path stock = folder.resolve("stock/bench.stock");
		Files.writeString(stock, Files.readString(stock).replace(" price 1.20", ""));
		assertTrue(quote().getAsJsonArray("unpriced").toString().contains("16 × 20 thou disc"));
		String text = CommandRun.padwright("quote", shop.plan("spring-service")).out();
		assertTrue(text.contains("16 × 20 thou disc") && text.contains("Shellac"), text);
	}

	@Test
	void aPadThatWasFoundSoundIsNotCharged() throws IOException {
		BigDecimal all = quote().get("parts").getAsBigDecimal();
		Path plan = shop.plan("spring-service");
		Files.writeString(plan, Files.readString(plan).replace("key Tr2 empty", "key Tr2 found sound empty"));
		assertEquals(all.subtract(new BigDecimal("15.35")), quote().get("parts").getAsBigDecimal());
	}

	@Test
	void aQuoteIsDrawnOnPaper() {
		CommandRun run = CommandRun.padwright("quote", shop.plan("spring-service"), "--pdf", "--svg", "-o",
				folder.resolve("papers"));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertEquals(2, run.out().lines().count(), run.out());
		assertTrue(Files.exists(folder.resolve("papers/SpringService-quote.pdf")));
		assertTrue(Files.exists(folder.resolve("papers/SpringService-quote-1.svg")));
	}

	@Test
	void timeWithoutARateIsUnusable() {
		for (String[] half : new String[][] { { "--minutes", "60" }, { "--rate", "60" }, { "--tax", "-1" },
				{ "--minutes", "-1", "--rate", "2" }, { "--tax", "many" } }) {
			Object[] arguments = new Object[half.length + 2];
			arguments[0] = "quote";
			arguments[1] = shop.plan("spring-service");
			System.arraycopy(half, 0, arguments, 2, half.length);
			CommandRun run = CommandRun.padwright(arguments);
			assertEquals(ExitStatus.UNUSABLE, run.status(), run.out());
		}
	}

	private JsonObject quote(String... options) {
		Object[] arguments = new Object[options.length + 3];
		arguments[0] = "quote";
		arguments[1] = "--json";
		arguments[2] = shop.plan("spring-service");
		System.arraycopy(options, 0, arguments, 3, options.length);
		CommandRun run = CommandRun.padwright(arguments);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		return JsonParser.parseString(run.out()).getAsJsonObject();
	}
}
