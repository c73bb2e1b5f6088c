package padwright.language.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.language.TestShop;
import padwright.model.stock.Rule;
import padwright.workup.checks.IssueCodes;

/** Each rule of the starter set that ships with the examples speaks where it should, and just beside it does not. */
class StarterRulesTest {

	private static final Path RULES = Path.of("..", "..", "examples", "shop", "stock", "rules.stock");
	/** As the brief of the starter set asks. */
	private static final int LEAST_RULES = 30;
	private static final String SHOP = """
			system Flute {
				joint head
				joint body
				joint foot
				touch L2
				key Tr closed hole 7.9 mm rim 0.9 mm soldered cup 10.5 mm
				key A open by L2 closes D hole 13.2 mm rim 1 mm soldered cup 16.5 mm
				key Thin open hole 13.2 mm rim 0.5 mm soldered cup 16.5 mm
				key D open hole 14.3 mm rim 1 mm drawn cup 17.5 mm
			}
			system Piccolo { key A open hole 6 mm rim 1 mm cup 8 mm }
			system Tiny based on Piccolo { }
			stock Bench with StarterRules { bench 20 °C 45 %RH %s }
			stock Damp with StarterRules { bench 20 °C 66 %RH %s }
			""";
	private static final String ARTICLES = """
			material acetal { }
			material microfibre { }
			material bladder { animal }
			material felt { }
			material card { }
			material paper { }
			material foam { lasts 6 years }
			material elastomer { lasts 8 years }
			pad Hard { kind rigid base acetal 32 thou face microfibre 65 thou skin bladder 1 thou }
			pad Soft { kind felt face felt 100 thou skin bladder 1 thou }
			pad Puffy { kind puffy face felt 100 thou }
			pad Metal { kind metal }
			pad Foam { kind foam face foam 100 thou }
			pad Moulded { kind elastomer face elastomer 100 thou }
			pad Hide { kind leather }
			pad Cork { kind cork }
			backing Disc acetal 20 thou
			backing CardDisc card 20 thou
			film Paper paper { 1 thou }
			film Clear acetal { 0.5 1 2 3 3.5 5 thou }
			adhesive Shellac { softens 65..70 °C }
			adhesive Hot { softens 80..90 °C }
			adhesive Wax { softens 50..57 °C }
			adhesive Thin { hazard EUH202 }
			adhesive Solvent { hazard H225, P210 }
			""";

	record RuleCase(String text, String speaks, String silent) {

		@Override
		public String toString() {
			return text;
		}
	}

	static List<RuleCase> cases() {
		List<String> lines = read().lines().filter(line -> !line.startsWith("//")).toList();
		List<RuleCase> cases = new ArrayList<>();
		for (int line = 0; line < lines.size(); line += 3) {
			cases.add(new RuleCase(lines.get(line), lines.get(line + 1), lines.get(line + 2)));
		}
		return cases;
	}

	private static String read() {
		try (InputStream stream = StarterRulesTest.class.getResourceAsStream("starter-rules.cases")) {
			return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("cases")
	void aRuleSpeaksWhereItShouldAndNotJustBeside(RuleCase rule) {
		assertEquals(1, spoken(rule.text(), rule.speaks(), '+'), rule.speaks());
		assertEquals(0, spoken(rule.text(), rule.silent(), '-'), rule.silent());
	}

	private static long spoken(String text, String plan, char sign) {
		assertEquals(sign, plan.charAt(0), plan);
		int colon = plan.indexOf(": ");
		String head = plan.substring(2, colon);
		String body = plan.substring(colon + 2);
		TestShop shop = shop().with("spring.plan", "plan Spring for " + head
				+ (head.contains(" with ") ? "" : " with Bench") + " { " + body + " }");
		assertEquals(List.of(), shop.resource("spring.plan").getErrors(), plan);
		return shop.messages("spring.plan", IssueCodes.RULE_BROKEN).stream().filter(words -> words.contains(text)).count();
	}

	private static TestShop shop() {
		try {
			return new TestShop().with("rules.stock", Files.readString(RULES))
					.with("bench.stock", SHOP.replace("%s", ARTICLES));
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}

	@Test
	void everyRuleHasItsCase() {
		List<Rule> rules = shop().document("rules.stock").getStocks().get(0).getRules();
		assertTrue(rules.size() >= LEAST_RULES, rules.size() + " rules");
		Set<RuleCase> used = new HashSet<>();
		for (Rule rule : rules) {
			List<RuleCase> about = cases().stream().filter(each -> rule.getText().startsWith(each.text())).toList();
			assertEquals(1, about.size(), rule.getText());
			assertTrue(used.addAll(about), rule.getText());
		}
		assertEquals(cases().size(), used.size());
	}
}
