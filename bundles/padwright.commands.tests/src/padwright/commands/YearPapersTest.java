package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages of the year as player, accountant and colleague read them, of jobs in each state. */
class YearPapersTest {

	private static final Path PLANS = Path.of("..", "..", "examples", "year", "plans");
	/** What no player has to look up, and what is none of the player's business. */
	private static final List<String> OF_THE_SHOP = List.of("thou", "shim", "stack", "mL/min", "coupling", "driven", "clamped", "wetted",
			"seat", "telephone", "tour", "New pads");
	private static final Pattern MONEY = Pattern.compile("\u2212?\\d+\\.\\d\\d");

	@TempDir
	private Path folder;

	private CommandRun draw(String paper, String plan) {
		return CommandRun.padwright(paper, PLANS + "/" + plan, "-o", folder);
	}

	private String words(String paper, String plan) throws IOException {
		CommandRun run = draw(paper, plan);
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		String kind = paper.equals("handback") ? "hand-back" : paper.equals("card") ? "bench-card" : paper;
		return Files.readString(folder.resolve(plan.substring(plan.indexOf('#') + 1) + "-" + kind + "-1.svg"))
				.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
	}

	@ParameterizedTest
	@ValueSource(strings = { "handback 09-september.plan#J044", "handback 03-march.plan#J010", "handback 07-july.plan#J034",
			"estimate 10-october.plan#J050", "invoice 09-september.plan#J044" })
	void thePlayerReadsNoWordOfTheShop(String page) throws IOException {
		String words = words(page.split(" ")[0], page.split(" ")[1]);
		OF_THE_SHOP.forEach(word -> assertFalse(Pattern.compile("\\b" + word + "s?\\b", Pattern.CASE_INSENSITIVE).matcher(words).find(),
				word + " in " + words));
	}

	@Test
	void aWarrantySaysWhatWasMadeGood() throws IOException {
		String words = words("handback", "03-march.plan#J010");
		for (String said : List.of("This visit makes good our earlier work of 2026-02-05.", "3 pads were sound and stayed.",
				"3 of those that stayed were made level again.")) {
			assertTrue(words.contains(said), said + " in " + words);
		}
	}

	@Test
	void aJobThatIsNotDoneGivesNoPageThatSaysSo() {
		for (String plan : List.of("10-october.plan#J049", "10-october.plan#J050", "10-october.plan#J052")) {
			assertEquals(ExitStatus.FINDINGS, draw("handback", plan).status(), plan);
			assertEquals(ExitStatus.UNUSABLE, draw("invoice", plan).status(), plan);
		}
	}

	@Test
	void theEstimateSaysWhatWasFoundAndNotYetWhenItWentHome() throws IOException {
		String words = words("estimate", "09-september.plan#J044");
		assertTrue(words.contains("Pads as we found them: worn at D; hard at A.")
				&& words.contains("Notes that need too much pressure: C4, D4."), words);
		assertFalse(words.contains("Handed over"), words);
	}

	/** Amounts of the lines, then net, tax and total; what was paid before; and what is left. */
	@ParameterizedTest
	@CsvSource({ "09-september.plan#J044, 3, 0", "09-september.plan#J045, 2, 50.00", "07-july.plan#J034, 3, 0",
			"09-september.plan#J047, 2, 0" })
	void theInvoiceAddsUpAsPrinted(String plan, int lines, BigDecimal deposit) throws IOException {
		String words = words("invoice", plan);
		List<BigDecimal> amounts = MONEY.matcher(words.substring(words.indexOf("amount, EUR"))).results()
				.map(found -> new BigDecimal(found.group().replace('\u2212', '-'))).toList();
		BigDecimal net = BigDecimal.ZERO;
		for (int line = 0; line < lines; line++) {
			net = net.add(amounts.get(2 * line + 1));
		}
		assertEquals(net, amounts.get(2 * lines));
		BigDecimal total = amounts.get(2 * lines + 2);
		assertEquals(total, net.add(amounts.get(2 * lines + 1)));
		if (deposit.signum() > 0) {
			assertEquals(deposit.negate(), amounts.get(2 * lines + 3));
			assertEquals(total.subtract(deposit), amounts.get(2 * lines + 4));
		}
	}

	@Test
	void whoeverTakesTheJobOverReadsWhatHappenedSoFarButNotWhatItCosts() throws IOException {
		String words = words("card", "10-october.plan#J049");
		for (String told : List.of("found hard", "The job so far", "Came in: low notes need pressure", "Pad F: clamped",
				"Note of the shop: needs it back before the tour", "Stage first look: 15 minutes")) {
			assertTrue(words.contains(told), told + " in " + words);
		}
		assertFalse(words.contains("P-239") || words.contains("90.00") || words.contains("what is needed"), words);
		assertEquals(1, Pattern.compile(" regulate ").matcher(words).results().count(), "F alone moves another key");
	}

	@Test
	void aSheetOfFilmForWhatIsNotSolvedSaysSo() throws IOException {
		String words = words("film", "10-october.plan#J050");
		assertTrue(words.contains("Nothing to cut yet.") && words.contains("A, G, F, D\u266f: not solved"), words);
	}
}
