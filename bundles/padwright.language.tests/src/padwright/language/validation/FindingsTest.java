package padwright.language.validation;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.language.MarkedText;
import padwright.language.TestShop;
import padwright.workup.checks.IssueCodes;

/** Every finding as a small text: what is reported, where, and how grave; and what comes near it but is right. */
class FindingsTest {

	private static final List<String> FILES = List.of("systems.cases", "mechanism.cases", "stock.cases", "rules.cases", "plans.cases",
			"heights.cases", "job.cases", "units.cases", "text.cases");

	static List<FindingCase> cases() {
		return FILES.stream().flatMap(file -> FindingCase.read(file).stream()).toList();
	}

	/** All but that of a file that is no text, which has no text to mark. */
	static Stream<String> codes() {
		return Arrays.stream(IssueCodes.class.getFields()).map(FindingsTest::value)
				.filter(code -> !code.equals(IssueCodes.UNREADABLE));
	}

	private static String value(Field constant) {
		try {
			return (String) constant.get(null);
		} catch (IllegalAccessException impossibleForPublic) {
			throw new AssertionError(impossibleForPublic);
		}
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("cases")
	void findingsAreAsMarked(FindingCase expected) {
		TestShop shop = new TestShop();
		expected.documents().forEach((name, marked) -> shop.with(name, MarkedText.withoutMarks(marked)));
		assertAll(expected.documents().entrySet().stream().map(document -> () -> assertEquals(document.getValue(),
				MarkedText.withMarks(MarkedText.withoutMarks(document.getValue()), shop.findings(document.getKey())),
				document.getKey())));
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("codes")
	void everyCodeHasACaseAndANearMiss(String code) {
		List<FindingCase> about = cases().stream().filter(each -> each.code().equals(code)).toList();
		assertTrue(about.stream().anyMatch(FindingCase::expectsItsFinding), "no case of " + code);
		assertTrue(about.stream().anyMatch(Predicate.not(FindingCase::expectsItsFinding)), "no near miss of " + code);
	}
}
