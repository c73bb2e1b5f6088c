package padwright.language.parser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.IGrammarAccess;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.language.Mark;
import padwright.language.TestShop;
import padwright.language.formatting2.DocumentFormatter;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Severity;

class ResumingParserTest {

	private static final Grammar GRAMMAR = TestShop.LANGUAGE.getInstance(IGrammarAccess.class).getGrammar();
	private static final String BEFORE = "stock Bench {\n\trule \"deep\" warn when ";
	private static final String AFTER = "\n\tpad Hard { }\n\tpad Hard { }\n}";

	@ParameterizedTest
	@ValueSource(ints = { RuleLimits.DEEPEST + 1, 10_000, 200_000 })
	void tooDeepNestingIsOneErrorAndTheRestIsChecked(int depth) {
		for (String open : List.of("(", "not ", "( not ", "not (not (")) {
			String text = BEFORE + open.repeat(depth) + "key is A" + ")".repeat(depth) + AFTER;
			List<Mark> findings = TestShop.of("bench.stock", text).findings("bench.stock");
			assertEquals(List.of(IssueCodes.SYNTAX, IssueCodes.DUPLICATE_ARTICLE),
					findings.stream().map(Mark::code).toList(), open);
			assertEquals(text.lastIndexOf("Hard"), findings.get(1).offset(), open);
		}
	}

	@ParameterizedTest
	@ValueSource(ints = { RuleLimits.LONGEST + 1, 100_000 })
	void tooLongRulesAreOneErrorAndTheRestIsChecked(int length) {
		for (String more : List.of(" or key is A", " and key is A")) {
			String text = BEFORE + "key is A" + more.repeat(length) + AFTER;
			assertEquals(List.of(IssueCodes.SYNTAX, IssueCodes.DUPLICATE_ARTICLE),
					TestShop.of("bench.stock", text).findings("bench.stock").stream().map(Mark::code).toList());
		}
	}

	@Test
	void theLongestRuleIsReadJudgedAndLaidOut() {
		String text = BEFORE + "key is B" + " or key is B".repeat(RuleLimits.LONGEST) + "\n}\n";
		TestShop shop = TestShop.of("bench.stock", text).with("flute.keys", "system Flute {\n\tkey A\n\tkey B\n}")
				.with("spring.plan", "plan Spring for Flute with Bench {\n\tkey A\n\tkey B\n}");
		assertEquals(List.of(), shop.findings("bench.stock"));
		assertEquals(List.of(IssueCodes.RULE_BROKEN), shop.findings("spring.plan").stream().map(Mark::code).toList());
		assertEquals(text, TestShop.LANGUAGE.getInstance(DocumentFormatter.class).format(shop.resource("bench.stock")));
	}

	@Test
	void theDeepestNestingIsRead() {
		String text = BEFORE + "(".repeat(RuleLimits.DEEPEST) + "key is A" + ")".repeat(RuleLimits.DEEPEST)
				+ " or (" + "not ".repeat(RuleLimits.DEEPEST - 1) + "key is B)" + "\n}";
		assertEquals(List.of(), TestShop.of("bench.stock", text).findings("bench.stock"));
	}

	@Test
	void parenthesesInTextsAndRemarksDoNotNest() {
		String text = "stock Bench {\n\trule \"" + "(".repeat(1000) + "\" warn when key is A // " + "(".repeat(1000)
				+ "\n}";
		assertEquals(List.of(), TestShop.of("bench.stock", text).findings("bench.stock"));
	}

	@Test
	void everyMistakeOfManyIsReportedAtItsPlace() {
		String text = "system Flute {\n" + "\tkey A quickly\n" + "\tkey B slowly done\n" + "\tkey C\n"
				+ "\tkey C\n" + "}";
		assertEquals(List.of(
				new Mark(text.indexOf("quickly"), "quickly".length(), Severity.ERROR, IssueCodes.SYNTAX),
				new Mark(text.indexOf("slowly"), "slowly done".length(), Severity.ERROR, IssueCodes.SYNTAX),
				new Mark(text.lastIndexOf("C"), 1, Severity.ERROR, IssueCodes.DUPLICATE_KEY)),
				TestShop.of("flute.keys", text).findings("flute.keys"));
	}

	@Test
	void textThatNeverMakesSenseComesToAnEnd() {
		String text = "system Flute {\n" + "}\nkey quickly\n".repeat(3000);
		assertEquals(IssueCodes.SYNTAX, TestShop.of("flute.keys", text).findings("flute.keys").get(0).code());
	}

	@Test
	void aWrongLetterInABlockIsOneErrorAndTheRestIsChecked() {
		String text = "stock S {\n\tmaterial m { }\n\tfilm A m { 0.5 1 l.5 2 thou }\n\tfeeler B 1 thou\n"
				+ "\tfilm C m {\n\t\t0.5 x\n\t\t1 2 thou\n\t}\n\tfeeler B 2 thou\n}\n";
		List<Mark> findings = TestShop.of("s.stock", text).findings("s.stock");
		assertEquals(List.of(IssueCodes.SYNTAX, IssueCodes.SYNTAX, IssueCodes.DUPLICATE_ARTICLE),
				findings.stream().map(Mark::code).toList());
		assertEquals(List.of(text.indexOf("l.5"), text.indexOf("x\n"), text.lastIndexOf("B")),
				findings.stream().map(Mark::offset).toList());
	}

	@Test
	void whatStandsBehindAWrongWordIsReadOn() {
		String text = "system Flute {\n\tjoint body quickly\n\ttouch L1\n\thole H 6 mm by L1\n\thole H 7 mm by L1\n}\n";
		assertEquals(List.of(
				new Mark(text.indexOf("quickly"), "quickly".length(), Severity.ERROR, IssueCodes.SYNTAX),
				new Mark(text.lastIndexOf("H"), 1, Severity.ERROR, IssueCodes.DUPLICATE_KEY)),
				TestShop.of("flute.keys", text).findings("flute.keys"));
	}

	@Test
	void aWrongWordInTheHeadOfABlockIsOneError() {
		String text = "system Flute {\n\tkey A\n}\nsystem Other extends Flute {\n\tkey B\n}\n";
		assertEquals(List.of(new Mark(text.indexOf("extends"), "extends Flute".length(), Severity.ERROR, IssueCodes.SYNTAX)),
				TestShop.of("flute.keys", text).findings("flute.keys"));
	}

	static Stream<String> statements() {
		return Stream.of("KeySystem", "Stock", "Process", "Plan", "Job", "JobEntry", "Estimate", "EstimateOption")
				.flatMap(name -> firstWords(GrammarUtil.findRuleForName(GRAMMAR, name))).distinct();
	}

	/** The words that the parts of a block begin with. */
	private static Stream<String> firstWords(AbstractRule block) {
		return GrammarUtil.containedRuleCalls(block).stream().map(RuleCall::getRule).filter(ParserRule.class::isInstance)
				.filter(rule -> !GrammarUtil.isDatatypeRule((ParserRule) rule))
				.flatMap(rule -> EcoreUtil2.eAllContentsAsList(rule).stream()
						.filter(part -> part instanceof Keyword || part instanceof RuleCall).limit(1))
				.filter(Keyword.class::isInstance).map(first -> ((Keyword) first).getValue());
	}

	@ParameterizedTest
	@MethodSource("statements")
	void readingGoesOnAtEveryStatement(String word) {
		assertTrue(LineStarts.isOne(word));
	}

	@ParameterizedTest
	@ValueSource(strings = { "prefer", "avoid" })
	void preferencesHaveTheSameLimits(String word) {
		String text = "stock Bench {\n\t" + word + " \"deep\" 1 when " + "(".repeat(100_000) + "key is A" + AFTER;
		assertEquals(List.of(IssueCodes.SYNTAX, IssueCodes.DUPLICATE_ARTICLE),
				TestShop.of("bench.stock", text).findings("bench.stock").stream().map(Mark::code).toList());
	}
}
