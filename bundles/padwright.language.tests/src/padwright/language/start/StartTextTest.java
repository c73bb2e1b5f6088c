package padwright.language.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.language.formatting2.DocumentFormatter;
import padwright.language.shop.ShopFolder;
import padwright.model.plan.Plan;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Severity;

/** What the wizards write: it is read without an error and is laid out already. */
class StartTextTest {

	private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

	static List<Path> plans() {
		return Examples.documents().stream().filter(file -> file.toString().endsWith(".plan")).toList();
	}

	private static void assertSoundAndLaidOut(TestShop shop, String name, String text) {
		assertTrue(shop.findings(name).stream().noneMatch(mark -> mark.severity() == Severity.ERROR),
				() -> text + shop.findings(name));
		assertEquals(text, TestShop.LANGUAGE.getInstance(DocumentFormatter.class).format(shop.resource(name)));
	}

	@Test
	void aSystemStandsAloneOrExtendsAnother() {
		String alone = SystemText.of("Flöte♯", "A \"title\" \\ of signs", Optional.empty());
		assertSoundAndLaidOut(TestShop.of("a.keys", alone), "a.keys", alone);
		String base = SystemText.of("S", "", Optional.empty()).replace("system S", "system ^key");
		String extended = SystemText.of("Mine", "", Optional.of("key"));
		assertSoundAndLaidOut(TestShop.of("b.keys", base).with("a.keys", extended), "a.keys", extended);
	}

	@Test
	void aTitleIsReadBackAsItWasGiven() {
		String title = "A \"title\" \\ of signs: 𝄞 ♭";
		String text = SystemText.of("S", title, Optional.empty());
		assertEquals(title, TestShop.of("a.keys", text).document("a.keys").getSystems().get(0).getLabel());
	}

	@Test
	void theStarterStockIsSound() {
		String text = StockText.starter("Bench");
		assertSoundAndLaidOut(TestShop.of("a.stock", text), "a.stock", text);
	}

	private static PlanLines lines(Length tolerance) {
		return new FirstLines(tolerance, "", "", "", "", "", "", "", "", FirstLines.USUAL_HOURS).lines();
	}

	@Test
	void whatIsAskedOfANewPlanStandsInItsFirstLines() {
		FirstLines said = new FirstLines(Length.thou("0.5"), "13..16.5", "An \"oboist\"", "warm", "acidic", "Felt", "Disc20",
				"Clear", "Shellac", "12  3 4.5");
		String text = new PlanText("First", "", "S", "", "Bench", DAY, said.lines(), List.of("A")).toString();
		TestShop shop = TestShop.of("s.keys", "system S {\n\tkey A cup 17 mm\n}\n")
				.with("b.stock", StockText.starter("Bench")).with("a.plan", text);
		assertSoundAndLaidOut(shop, "a.plan", text);
		assertTrue(text.contains("\tbed 13..16.5 thou\n\tplayer \"An \\\"oboist\\\"\" { tone warm saliva acidic }\n"
				+ "\tfit Felt on Disc20 with Clear glue Shellac\n\tread at 12 3 4.5\n"), text);
	}

	@ParameterizedTest
	@CsvSource({"16..13,, BED", "13-16,, BED", "13..16, 12 13, HOURS", "13..16, 12, HOURS", "13..16, noon 3, HOURS"})
	void whatCannotBeWrittenIsNamed(String bed, String hours, FirstLines.Fault fault) {
		FirstLines said = new FirstLines(Length.thou("0.5"), bed, "", "", "", "", "", "", "", hours == null ? "" : hours);
		assertEquals(Optional.of(fault), said.fault());
		assertThrows(IllegalArgumentException.class, said::lines);
	}

	@Test
	void aPlanOfOurOwnSystemAndTheStarterStockIsSound() {
		String text = new PlanText("First", "", "S", "", "Bench", DAY, lines(Length.millimetres("0.012701")),
				List.of("A", "with")).toString();
		TestShop shop = TestShop.of("s.keys", "unit mm\n\nsystem S {\n\tkey A cup 17\n\tkey ^with cup 17\n}\n")
				.with("b.stock", StockText.starter("Bench")).with("a.plan", text);
		assertSoundAndLaidOut(shop, "a.plan", text);
		assertEquals(2, shop.document("a.plan").getPlans().get(0).getKeys().size());
	}

	@ParameterizedTest
	@MethodSource("plans")
	void everyExampleCanBeATemplate(Path file) {
		String name = Examples.name(file);
		Plan template = Examples.with(file, Examples.text(file)).document(name).getPlans().get(0);
		List<String> keys = EffectiveSystem.of(template.getSystem()).keys().stream().map(EffectiveKey::name).toList();
		String text = new PlanText(template.getName(), "Again", template.getSystem().getName(), "X-1",
				template.getStock().getName(), DAY, PlanLines.of(template, template.getStock().getName()), keys).toString();
		TestShop shop = Examples.with(file, text);
		Plan again = shop.document(name).getPlans().get(0);
		assertEquals(text, TestShop.LANGUAGE.getInstance(DocumentFormatter.class).format(shop.resource(name)));
		assertEquals(keys, again.getKeys().stream().map(row -> row.getKey().getName()).toList());
		assertEquals(template.getHours(), again.getHours());
		assertEquals(template.getTolerance(), again.getTolerance());
		assertEquals(template.getBed(), again.getBed());
		assertEquals(template.getFitting().getPad().getName(), again.getFitting().getPad().getName());
	}

	@Test
	void aTemplateKeepsAllThatItsPlanBeginsWith() {
		List<String> said = List.of("seat within 0.5 thou", "bed 0.33..0.42 mm",
				"player \"P-17\" { tone bright saliva mild home 24.5 °C 60 %RH }",
				"fit Felt on Disc20 with Clear glue Shellac", "read at 12 3 6 9 graded");
		String text = "unit mm\n\nplan First for S with Bench {\n\t" + String.join("\n\t", said) + "\n\n\tkey A\n}\n";
		Plan template = TestShop.of("s.keys", "system S {\n\tkey A cup 17 mm\n}\n")
				.with("b.stock", StockText.starter("Bench")).with("a.plan", text).document("a.plan").getPlans().get(0);
		assertEquals(new PlanLines(LengthUnit.MILLIMETRE, said), PlanLines.of(template, "Bench"));
	}

	@Test
	void aPlayerOfWhomLittleIsSaidIsKeptToo() {
		for (String player : List.of("player { saliva acidic }", "player \"P-18\" { }", "player { tone dark }")) {
			Plan template = TestShop.of("a.plan", "plan First for S {\n\t" + player + "\n}\n").document("a.plan").getPlans().get(0);
			assertEquals(List.of(player), PlanLines.of(template, "").lines());
		}
	}

	@Test
	void anotherStockMayLackWhatIsFitted() {
		Path file = plans().get(0);
		Plan template = Examples.with(file, Examples.text(file)).document(Examples.name(file)).getPlans().get(0);
		assertTrue(PlanLines.of(template, template.getStock().getName()).lines().stream()
				.anyMatch(line -> line.startsWith("fit ")));
		assertFalse(PlanLines.of(template, "Another").lines().stream().anyMatch(line -> line.startsWith("fit ")));
	}

	@ParameterizedTest
	@ValueSource(strings = { "B", "Spring_2026", "Fl\u00F6te", "F\u266F", "_" })
	void namesOfTheGrammarAreFree(String name) {
		assertEquals(Optional.empty(), NameFault.of(name));
		assertEquals(name, NameFault.reference(name));
		assertEquals(1, TestShop.of("a.keys", SystemText.of(name, "", Optional.empty())).document("a.keys")
				.getSystems().size());
	}

	@ParameterizedTest
	@ValueSource(strings = { "2026", "two words", "a-b", "a.b", "^", "^key", "key{", " a", "a ", "//", "\uD834\uDD1E" })
	void otherSignsAreNone(String name) {
		assertEquals(Optional.of(NameFault.SIGNS), NameFault.of(name));
	}

	@Test
	void wordsOfTheLanguageAreNone() {
		assertEquals(Optional.of(NameFault.KEYWORD), NameFault.of("key"));
		assertEquals(Optional.of(NameFault.MISSING), NameFault.of(""));
		assertEquals("\"key\"", NameFault.reference("key"));
		assertEquals("\"low C\"", NameFault.reference("low C"));
	}

	@Test
	void nothingIsWrittenUnderAFaultyName() {
		assertThrows(IllegalArgumentException.class, () -> SystemText.of("two words", "", Optional.empty()));
		assertThrows(IllegalArgumentException.class, () -> StockText.starter("key"));
		assertThrows(IllegalArgumentException.class, () -> new PlanText("", "", "S", "", "", DAY,
				lines(Length.thou("0.5")), List.of()));
	}

	@Test
	void filesAreCalledAsInTheExamples() {
		assertEquals("spring-service.plan", FileName.of("SpringService", "plan"));
		assertEquals("bfoot2026-b.keys", FileName.of("BFoot2026_B", "keys"));
		assertEquals("quarter-tone.keys", FileName.of("QuarterTone", "keys"));
	}

	@Test
	void theMarkIsThatOfTheExamples() throws Exception {
		assertEquals(Files.readString(Examples.TEMPLATES.resolve(ShopFolder.MARKER)), ShopMark.TEXT);
	}
}
