package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.language.Examples;
import padwright.language.TestShop;

class ElementFieldsTest {

	/** Of one document: each is read anew. */
	private static final int MOST_TRIED = 150;

	/** A value for every rule that a value can follow. */
	private static String sample(String rule) {
		return switch (rule) {
			case "Measure" -> "0.25 mm";
			case "SignedMeasure" -> "+0.5 mm";
			case "Decimal" -> "1.25";
			case "SignedDecimal" -> "-3";
			case "Range" -> "1..2";
			case "Date" -> "2026-03-04";
			case "Hour" -> "1.5";
			case "FeelerReading" -> "1";
			case "Count" -> "3";
			case "LengthUnit", "RuleUnit" -> "mm";
			case "PropertyName" -> "pad.kind";
			case "ValueName" -> "felt";
			case "Name" -> "\"left hand\"";
			case "Cents" -> "+12.5";
			case "STRING" -> "a \"word\"";
			default -> throw new AssertionError(rule);
		};
	}

	static List<Path> documents() {
		return Examples.documents(Examples.TEMPLATES);
	}

	private static TestShop shop(String text) {
		return TestShop.of("a.plan", text);
	}

	private static ElementField field(TestShop shop, String place, String attribute) {
		String text = shop.resource("a.plan").getParseResult().getRootNode().getText();
		EObject element = ElementFields
				.elementAt(shop.resource("a.plan").getParseResult().getRootNode(), text.indexOf(place)).orElseThrow();
		return ElementFields.of(element).stream().filter(field -> field.feature().getName().equals(attribute))
				.findFirst().orElseThrow();
	}

	private static String edited(String text, String place, String attribute, String value) {
		return TextEdit.apply(field(shop(text), place, attribute).edit(value), text);
	}

	@Test
	void aValueIsReplacedAndNothingElse() {
		assertEquals("stock S { // one\n\tfeeler A 2 mm // two\n}\n",
				edited("stock S { // one\n\tfeeler A 0.5 thou // two\n}\n", "feeler", "thickness", "2 mm"));
	}

	@Test
	void aMissingValueStandsWhereTheGrammarWantsIt() {
		assertEquals("plan P for S {\n\tkey A found torn empty 1 remark \"new\" // one\n\tkey B\n}\n",
				edited("plan P for S {\n\tkey A found torn empty 1 // one\n\tkey B\n}\n", "key A", "remark", "new"));
		assertEquals("plan P for S {\n\tkey A found torn empty 1\n}\n",
				edited("plan P for S {\n\tkey A empty 1\n}\n", "key A", "found", "torn"));
		assertEquals("system S {\n\tkey A hole 3 rim 1 drawn cup 5\n}\n",
				edited("system S {\n\tkey A hole 3 drawn cup 5\n}\n", "key A", "rimWidth", "1"));
	}

	@Test
	void aStatementOfABlockGetsALineOfItsOwn() {
		assertEquals("plan P for S { // one\n\tdate 2026-03-04\n\tkey A\n}\n",
				edited("plan P for S { // one\n\tkey A\n}\n", "plan", "date", "2026-03-04"));
		assertEquals("plan P for S {\r\n\tdate 2026-03-04\r\n\tkey A\r\n}\r\n",
				edited("plan P for S {\r\n\tkey A\r\n}\r\n", "plan", "date", "2026-03-04"));
		assertEquals("stock S {\n\tpad A {\n\t\tkind felt // one\n\t\tsinks 2 thou\n\t\tprice 3\n\t}\n}\n",
				edited("stock S {\n\tpad A {\n\t\tkind felt // one\n\t\tprice 3\n\t}\n}\n", "pad", "sinks", "2 thou"));
	}

	@Test
	void partsMayBeginWithoutAValue() {
		String text = "plan P for S {\n\tplayer { tone bright }\n}\n";
		assertEquals(text.replace("player", "player \"X\""), edited(text, "player", "name", "X"));
		assertEquals(text.replace("bright", "dark"), edited(text, "player", "tone", "dark"));
		assertEquals(text.replace("bright", "bright saliva mild"), edited(text, "player", "saliva", "mild"));
	}

	@Test
	void whatBelongsToAStatementStaysInItsLine() {
		assertEquals("plan P for S {\n\tbed 1..2 mm\n\tkey A\n}\n",
				edited("plan P for S {\n\tbed 1..2\n\tkey A\n}\n", "plan", "bedUnit", "mm"));
		assertThrows(NoSuchElementException.class, () -> field(shop("plan P for S {\n\tkey A\n}\n"), "plan", "bedUnit"));
	}

	@Test
	void aListIsOneFieldThatIsJudgedByReadingItAll() {
		String text = "system S {\n\tkey A // one\n}\nplan P for S {\n\tread at 12 3\n\tkey A felt 1 2\n}\n";
		assertEquals("12 3", field(shop(text), "plan", "hours").text());
		assertEquals(text.replace("12 3", "12 6"), edited(text, "plan", "hours", "12 6"));
		assertEquals(text.replace("12 3", "12 3 graded"), edited(text, "plan", "graded", "graded"));
		assertTrue(field(shop(text), "plan", "hours").fault("12 noon").isPresent());
		assertEquals(text.replace("key A //", "key A closes A, A //"), edited(text, "key A //", "closes", "A, A"));
		assertEquals(text.replace("key A //", "key A spring 30 grams //"), edited(text, "key A //", "spring", "30"));
	}

	@Test
	void whatIsOptionalIsTakenAwayWithItsWords() {
		String text = "system S {\n\tkey A open hole 3 rim 1 cup 5 at 10 around 5\n}\n";
		assertEquals(text.replace(" around 5", ""), edited(text, "key A", "around", ""));
		assertEquals(text.replace(" rim 1", ""), edited(text, "key A", "rimWidth", ""));
		assertEquals(text.replace(" open", ""), edited(text, "key A", "posture", ""));
		assertTrue(field(shop(text), "key A", "diameter").fault("").isPresent());
	}

	@Test
	void onlyNamesAreForRenaming() {
		String text = "system S {\n\tkey A\n}\n";
		assertTrue(field(shop(text), "key A", "name").isName());
		assertFalse(field(shop(text), "key A", "label").isName());
	}

	@Test
	void theHoursThatAreReadAreTypedApartByBlanks() {
		String text = "plan P for S {\n\tread at 12 3 graded\n\tkey A nick at 1 2\n}\n";
		assertEquals("12 3", field(shop(text), "plan", "hours").text());
		assertEquals(text.replace("12 3", "12 4.5 6"), edited(text, "plan", "hours", " 12  4.5 6 ").replace("  ", " "));
		assertTrue(field(shop(text), "plan", "hours").fault("12 13").isPresent());
		assertEquals("plan P for S {\n\tread at 12 6\n\tkey A\n}\n",
				edited("plan P for S {\n\tkey A\n}\n", "plan", "hours", "12 6"));
	}

	@Test
	void whatIsFittedIsChosenFromTheStock() {
		String stock = "stock T {\n\tmaterial m { }\n\tpad One { }\n\tpad \"Two b\" { }\n\tadhesive Wax { }\n}\n";
		String text = stock + "plan P for S with T {\n\tfit One\n\tkey A\n}\n";
		assertEquals(List.of("One", "Two b"), field(shop(text), "fit", "pad").choices());
		assertEquals(text.replace("fit One", "fit \"Two b\""), edited(text, "fit", "pad", "Two b"));
		assertEquals(text.replace("fit One", "fit One glue Wax"), edited(text, "fit", "adhesive", "Wax"));
		assertTrue(field(shop(text), "fit", "pad").fault("Three").isPresent());
		assertEquals(text, edited(text.replace("\tfit One\n", ""), "plan P", "pad", "One"));
		assertEquals("S", field(shop("system S { }\nplan P for S { }\n"), "plan", "system").text());
	}

	@Test
	void faultsAreTold() {
		ElementField thickness = field(shop("stock S {\n\tfeeler A 0.5 thou\n}\n"), "feeler", "thickness");
		assertEquals(Optional.empty(), thickness.fault("0.75"));
		assertTrue(thickness.fault("thin").isPresent());
		assertTrue(thickness.fault("1 // thou").isPresent());
		assertTrue(thickness.fault("1 2").isPresent());
		assertTrue(thickness.fault("").isPresent());
		assertThrows(IllegalArgumentException.class, () -> thickness.edit("thin"));
		ElementField found = field(shop("plan P for S {\n\tkey A found torn\n}\n"), "key", "found");
		assertEquals(List.of("sound", "worn", "torn", "tacky", "swollen", "hard", "loose", "noisy"), found.choices());
		assertTrue(found.fault("good").isPresent());
	}

	@ParameterizedTest
	@MethodSource("documents")
	void whatIsWrittenInAnExampleIsReadBack(Path file) {
		String name = Examples.name(file);
		String text = Examples.text(file);
		TestShop shop = Examples.with(file, text);
		int errors = shop.resource(name).getParseResult().hasSyntaxErrors() ? 1 : 0;
		List<EObject> elements = new ArrayList<>();
		shop.document(name).eAllContents().forEachRemaining(elements::add);
		List<ElementField> tried = elements.stream().flatMap(element -> ElementFields.of(element).stream()
				.filter(field -> field.element() == element && isTried(field))).limit(MOST_TRIED).toList();
		assertFalse(tried.isEmpty());
		tried.forEach(field -> assertReadBack(field, file, text, errors));
	}

	/** A list that is not there yet could begin with anything. */
	private static boolean isTried(ElementField field) {
		return field.place().isPresent() || !(field.text().isEmpty() && field.choices().isEmpty());
	}

	private static void assertReadBack(ElementField field, Path file, String text, int errors) {
		String value = !field.choices().isEmpty() ? field.choices().get(0)
				: field.place().map(place -> sample(place.rule().getName())).orElse(field.text());
		String edited = TextEdit.apply(field.edit(value), text);
		TestShop again = TestShop.of(Examples.name(file), edited);
		assertEquals(errors == 1, again.resource(Examples.name(file)).getParseResult().hasSyntaxErrors(), edited);
		EObject same = again.resource(Examples.name(file))
				.getEObject(field.element().eResource().getURIFragment(field.element()));
		assertEquals(value, ElementFields.of(same).stream()
				.filter(one -> (one.element() == same || one.element().eContainer() == same)
						&& one.feature() == field.feature()).findFirst().orElseThrow()
				.text(), edited);
	}
}
