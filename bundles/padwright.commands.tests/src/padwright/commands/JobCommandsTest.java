package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** What is next, money and learning, from plans alone. */
class JobCommandsTest {

	private static final Path YEAR = Path.of("..", "..", "examples", "year");

	@TempDir
	private Path folder;
	private ExampleShop shop;

	@BeforeEach
	void copyTheShop() throws IOException {
		shop = ExampleShop.copiedTo(folder);
	}

	private List<String> steps(String day) {
		List<String> steps = new ArrayList<>();
		CommandRun.padwright("next", shop.plan("whole-job"), "--on", day, "--json").json().getAsJsonArray("steps")
				.forEach(step -> steps.add(step.getAsJsonObject().get("kind").getAsString() + " "
						+ step.getAsJsonObject().get("what").getAsString() + " "
						+ step.getAsJsonObject().get("keys").getAsString()));
		return steps;
	}

	private void change(String was, String is) throws IOException {
		Path plan = shop.plan("whole-job");
		String text = Files.readString(plan);
		assertTrue(text.contains(was), was);
		Files.writeString(plan, text.replace(was, is));
	}

	@Test
	void whatWentHomeIsLookedAtOnceMore() {
		assertEquals(List.of("second-look free second look "), steps("2026-04-01"));
	}

	@Test
	void whatIsAllDoneIsHandedOver() throws IOException {
		change("\t\tdelivered on 2026-03-06 by \"K\"\n", "");
		assertEquals(List.of("deliver hand it over "), steps("2026-03-06"));
	}

	@Test
	void partsAgreementMorningAndStageAreWaitedFor() throws IOException {
		change("\t\tdelivered on 2026-03-06 by \"K\"\n", "");
		change(" over 2026-03-01", "");
		change("\t\tagreed three on 2026-02-25\n", "");
		change("on 2026-03-04 by \"M\" shim none delivered . . . . on 2026-03-05 by \"M\"\n\tkey D",
				"by \"M\" shim none delivered . . . . by \"M\"\n\tkey D");
		change("\t\tstage regulate took 30 minutes on 2026-03-05 by \"M\"\n", "");
		assertEquals(List.of("agree waits for the player to agree to the estimate ",
				"wait waits for parts: pads for F, E and D, until 2026-03-02 ", "morning feel again, the morning after E",
				"work stage regulate (usually 60 minutes), check: light left noted at every coupling "), steps("2026-03-04"));
	}

	/** The inspection's loose tenon, dry cork and play were put right; so no rule speaks of them any more. */
	@Test
	void whatTheDiarySaysIsCuredIsNotToldAgain() throws IOException {
		assertFalse(CommandRun.padwright("check", shop.plan("whole-job")).out().contains("warning"));
		change("\t\ttenon foot expanded 1 thou on 2026-03-02 by \"L\"\n", "");
		change("head cork replaced at", "head cork at");
		String found = CommandRun.padwright("check", shop.plan("whole-job")).out();
		assertTrue(found.contains("a loose tenon leaks") && found.contains("a head cork that is not sound"), found);
		assertFalse(found.contains("play in the mechanism"), found);
	}

	/** A pad that was clamped rests; the others are felt, for the first time. */
	@Test
	void aPadAtRestIsNotAskedForBeforeTheMorning() {
		List<String> work = new ArrayList<>();
		CommandRun.padwright("next", YEAR.resolve("plans/10-october.plan") + "#J049", "--on", "2026-10-13", "--json").json()
				.getAsJsonArray("steps").forEach(step -> work.add(step.getAsJsonObject().get("what").getAsString() + ": "
						+ step.getAsJsonObject().get("keys").getAsString()));
		assertTrue(work.containsAll(List.of("feel again, the morning after: F",
				"feel all around, and write the readings down: E, D")), work.toString());
	}

	@Test
	void aPadThatIsOnlyPlannedIsToBeFitted() {
		CommandRun run = CommandRun.padwright("next", shop.plan("first"), "--on", "2026-03-01");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		assertTrue(run.out().contains("level the pads") && run.out().contains("F♯, F, D♯"), run.out());
	}

	@Test
	void ofAShopOnlyPlansWithAJobAreTold() {
		JsonObject next = CommandRun.padwright("next", folder, "--on", "2026-04-01", "--json").json();
		assertEquals(1, next.getAsJsonArray("steps").size());
		assertTrue(next.get("plansWithoutJob").getAsInt() > 10);
	}

	/** 3 · 14 + 180 + 12.50 + 4 = 238.50; 19 % are 45.315, rounded up; less 50 paid before. */
	@Test
	void moneyAddsUpToTheCent() {
		JsonObject money = CommandRun.padwright("money", shop.plan("whole-job"), "--json").json();
		assertEquals("three", money.get("agreed").getAsString());
		JsonObject invoice = money.getAsJsonObject("invoice");
		assertEquals("238.50", invoice.get("net").getAsString());
		assertEquals("45.32", invoice.get("tax").getAsString());
		assertEquals("283.82", invoice.get("total").getAsString());
		assertEquals("233.82", invoice.get("balance").getAsString());
		JsonObject difference = money.getAsJsonArray("differences").get(0).getAsJsonObject();
		assertEquals("felt bumper", difference.get("item").getAsString());
		assertEquals("4.00", difference.get("invoiced").getAsString());
		assertEquals(1, money.getAsJsonArray("differences").size());
	}

	@Test
	void numbersOfInvoicesThatAreMissingOrTwiceAreNamed() {
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("money", folder).status());
		CommandRun.write(folder.resolve("plans"), "more.plan", "plan More for BoehmC {\n\tjob {\n\t\tinvoice 118 { }\n"
				+ "\t\tinvoice 121 { item \"a\" 0.005 item \"b\" 0.005 }\n\t}\n}\n");
		CommandRun run = CommandRun.padwright("money", folder, "--json");
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertEquals("[119,120]", run.json().getAsJsonArray("missing").toString());
		assertEquals("[118]", run.json().getAsJsonArray("twice").toString());
		assertEquals(122, run.json().get("next").getAsInt());
	}

	@Test
	void aYearOfOneBenchChecksCleanAndIsTold() {
		CommandRun check = CommandRun.padwright("check", YEAR, "--json");
		assertEquals(ExitStatus.CLEAN, check.status(), check.out());
		check.json().getAsJsonArray("findings").forEach(finding -> assertEquals("info",
				finding.getAsJsonObject().get("severity").getAsString(), finding.toString()));
		JsonObject next = CommandRun.padwright("next", YEAR, "--on", "2026-10-13", "--json").json();
		assertEquals(0, next.get("plansWithoutJob").getAsInt());
		assertTrue(next.getAsJsonArray("steps").size() >= 8, next.toString());
		CommandRun money = CommandRun.padwright("money", YEAR, "--json");
		assertEquals(ExitStatus.CLEAN, money.status(), money.err());
		assertTrue(money.json().getAsJsonArray("invoices").size() >= 35);
	}

	/** Nothing is invoiced as a pad that the player's page does not call replaced. */
	@Test
	void theYearInvoicesAsManyPadsAsWereReplaced() throws IOException {
		Pattern invoiced = Pattern.compile("(?s)invoice \\d+ .*?\\n\t\t}");
		for (String plan : plansOfTheYear()) {
			Matcher invoice = invoiced.matcher(plan);
			if (invoice.find()) {
				Matcher pads = Pattern.compile("item \"pads\" [\\d.]+ times (\\d+)").matcher(invoice.group());
				long replaced = plan.lines().filter(line -> line.matches("\tkey \\w+ found (?!sound).* stack .*")).count();
				assertEquals(replaced, pads.find() ? Integer.parseInt(pads.group(1)) : 0, plan);
			}
		}
	}

	@Test
	void theYearHolds40InstrumentsOfThreeHandsWithEstimatesWarrantiesAndDeliveries() throws IOException {
		String all = String.join("\n", plansOfTheYear());
		assertEquals(40, all.lines().flatMap(line -> found("serial \"([^\"]+)\"", line)).distinct().count());
		assertEquals(List.of("K", "L", "M"), found("by \"([^\"]+)\"", all).distinct().sorted().toList());
		assertEquals(4, found("(warranty for)", all).count());
		assertTrue(found("(estimate on)", all).count() > 40 && found("(delivered on) .* by", all).count() > 40);
		assertTrue(found("(deposit) ", all).count() > 0 && found("(tenon head expanded)", all).count() > 0);
	}

	private static Stream<String> found(String pattern, String text) {
		return Pattern.compile(pattern).matcher(text).results().map(found -> found.group(1));
	}

	private static List<String> plansOfTheYear() throws IOException {
		List<String> plans = new ArrayList<>();
		try (Stream<Path> files = Files.list(YEAR.resolve("plans"))) {
			for (Path file : files.toList()) {
				Pattern.compile("(?ms)^plan .*?^}").matcher(Files.readString(file)).results()
						.forEach(plan -> plans.add(plan.group()));
			}
		}
		assertTrue(plans.size() > 40);
		return plans;
	}

	@Test
	void whatTheYearTeachesIsWrittenAsAStockThatChecksClean() throws IOException {
		Path stock = folder.resolve("learned.stock");
		CommandRun run = CommandRun.padwright("learn", YEAR, "--write", stock, "--on", "2026-10-13", "--json");
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		boolean told = false;
		for (var each : run.json().getAsJsonArray("figures")) {
			JsonObject figure = each.getAsJsonObject();
			if (figure.has("middle")) {
				told = true;
				assertTrue(figure.get("low").getAsDouble() <= figure.get("middle").getAsDouble()
						&& figure.get("middle").getAsDouble() <= figure.get("high").getAsDouble(), figure.toString());
			}
			assertFalse(figure.get("evidence").getAsString().isEmpty());
		}
		assertTrue(told);
		assertEquals(ExitStatus.CLEAN, CommandRun.padwright("check", stock).status());
		assertTrue(Files.readString(stock).contains("on 2026-10-13"));
	}

	/** On each instrument one hour in four of every pad opened by a leaf of half a thou: by 0.125 thou in the middle. */
	@Test
	void settlingInTheFirstWeeksIsToldByArticleAndRefusedForTwoInstruments() throws IOException {
		for (int instrument = 0; instrument < 4; instrument++) {
			settling(instrument, "A G F", ". . . 0.5");
		}
		JsonObject told = settled();
		assertTrue(told.get("low").getAsDouble() < 0.125 && told.get("high").getAsDouble() > 0.125, told.toString());
		assertTrue(told.get("evidence").getAsString().startsWith("48 hours felt again, on 4 instruments"), told.toString());
		Files.delete(folder.resolve("settling/first2.plan"));
		Files.delete(folder.resolve("settling/first3.plan"));
		assertFalse(settled().has("middle"), "two instruments tell nothing");
	}

	private JsonObject settled() {
		for (var each : CommandRun.padwright("learn", folder.resolve("settling"), "--json").json().getAsJsonArray("figures")) {
			if (each.getAsJsonObject().get("topic").getAsString().equals("settling")) {
				return each.getAsJsonObject();
			}
		}
		throw new AssertionError("nothing of settling");
	}

	private void settling(int instrument, String keys, String found) throws IOException {
		Path place = folder.resolve("settling");
		Files.createDirectories(place);
		for (String file : List.of("stock/bench.stock", "systems/flutes.keys")) {
			Files.copy(YEAR.resolve(file), place.resolve(Path.of(file).getFileName()),
					StandardCopyOption.REPLACE_EXISTING);
		}
		StringBuilder first = new StringBuilder();
		StringBuilder second = new StringBuilder();
		for (String key : keys.split(" ")) {
			first.append("\tkey " + key + " empty 15 15 15 15 stack 7.5 7.5 felt . . . . shim none\n");
			second.append("\tkey " + key + " felt " + found + " shim none\n");
		}
		String head = " for Flute serial \"S-" + instrument + "\" with YearBench {\n\tdate %s\n\tplayer \"P\" { }\n"
				+ "\tfit Felt with Clear\n\tread at 12 3 6 9\n";
		CommandRun.write(place, "first" + instrument + ".plan",
				"plan First" + instrument + head.formatted("2026-03-02") + first + "}\n");
		CommandRun.write(place, "second" + instrument + ".plan",
				"plan Second" + instrument + head.formatted("2026-04-06") + second + "}\n");
	}

	@Test
	void plansOfTheYearAreFoundByWhatTheirDiariesSay() {
		JsonObject speaks = CommandRun.padwright("search", YEAR, "speaks", "Y-114", "--json").json();
		assertTrue(speaks.getAsJsonArray("found").size() >= 1, speaks.toString());
		speaks.getAsJsonArray("found").forEach(found -> assertEquals("Y-114",
				found.getAsJsonObject().get("serial").getAsString()));
		JsonObject parts = CommandRun.padwright("search", YEAR, "pads on order", "--json").json();
		assertTrue(parts.toString().contains("J052"), parts.toString());
		JsonObject clamped = CommandRun.padwright("search", YEAR, "Y-102", "CLAMPED", "--json").json();
		assertEquals("clamped G on 2026-01-17 by \"L\"",
				clamped.getAsJsonArray("found").get(0).getAsJsonObject().get("found").getAsString());
		JsonObject stage = CommandRun.padwright("search", YEAR, "stage", "regulate", "--json").json();
		assertTrue(stage.getAsJsonArray("found").size() > 10, stage.toString());
		JsonObject nothing = CommandRun.padwright("search", YEAR, "contrabassoon", "--json").json();
		assertEquals(0, nothing.getAsJsonArray("found").size());
	}

	/** By the words that the German papers have for what is written in the words of the language. */
	@Test
	void germansFindByTheirWordsAndByWhatIsWritten() {
		for (String word : List.of("geklemmt", "clamped")) {
			JsonObject found = CommandRun.padwright("--language", "de", "search", YEAR, "Y-102", word, "--json").json();
			assertEquals("Polster G: geklemmt, 17.01.2026, von L",
					found.getAsJsonArray("found").get(0).getAsJsonObject().get("found").getAsString(), word);
		}
		JsonObject torn = CommandRun.padwright("--language", "de", "search", YEAR, "gerissen", "Y-140", "--json").json();
		assertEquals(2, torn.getAsJsonArray("found").size(), torn.toString());
		JsonObject spring = CommandRun.padwright("--language", "de", "search", YEAR, "Feder", "ersetzt", "--json").json();
		assertTrue(spring.getAsJsonArray("found").size() > 10, spring.toString());
		assertEquals(0, CommandRun.padwright("search", YEAR, "geklemmt", "--json").json().getAsJsonArray("found").size());
	}

	@Test
	void tooFewPlansAreRefused() throws IOException {
		Files.createDirectories(folder.resolve("alone"));
		CommandRun.write(folder, "alone/a.plan", "plan A for BoehmC {\n}\n");
		CommandRun run = CommandRun.padwright("learn", folder.resolve("alone"), "--write", folder.resolve("no.stock"));
		assertEquals(ExitStatus.FINDINGS, run.status());
		assertFalse(Files.exists(folder.resolve("no.stock")));
	}
}
