package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

import padwright.language.TestShop;

/** Each edit as the text before and after it. */
class ListRowsTest {

	private static final String STOCK = """
			stock S {
				material felt { }
				material foil { }
				pad A {
					base felt 1 mm // one
					skin foil 0.1 mm
				}
			}
			""";
	private static final String PLAN = """
			system S {
				joint body bore 19 mm at 0 mm, 18 mm at 100 mm
				key A closes A through screw ratio 1
			}
			plan P for S {
				key A felt 1 2 shim 0.5 from 1 to 3, 1 from 4 to 6 // two
			}
			""";

	private static ListRows rows(String text, String list) {
		TestShop shop = TestShop.of("a.plan", text);
		for (var all = shop.document("a.plan").eAllContents(); all.hasNext();) {
			EObject element = all.next();
			for (ElementField field : ElementFields.of(element)) {
				if (field.feature().getName().equals(list) && field.element() == element && ListRows.of(field).isPresent()) {
					return ListRows.of(field).get();
				}
			}
		}
		throw new AssertionError(list);
	}

	private static void changes(String text, String list, Function<ListRows, List<TextEdit>> edit, String after) {
		assertEquals(after, TextEdit.apply(edit.apply(rows(text, list)), text));
		assertFalse(TestShop.of("b.plan", after).resource("b.plan").getParseResult().hasSyntaxErrors());
	}

	private static List<String> fields(ListRows rows, int row) {
		return rows.fields(row).stream().map(field -> field.feature().getName() + "=" + field.text()).toList();
	}

	@Test
	void everyRowHasItsFields() {
		assertEquals(List.of("role=base", "material=felt", "thickness=1 mm"), fields(rows(STOCK, "layers"), 0));
		assertEquals(List.of("thickness=1", "from=4", "to=6"), fields(rows(PLAN, "pieces"), 1));
		assertEquals(List.of("diameter=18 mm", "position=100 mm"), fields(rows(PLAN, "bore"), 1));
	}

	@Test
	void whatHasMoreFieldsThanALineHasLinesOfItsOwn() {
		assertTrue(rows(PLAN, "bore").isInOneLine());
		assertFalse(rows(PLAN, "closes").isInOneLine());
		assertEquals(List.of("driven=A", "kind=screw", "thread=", "pitch=", "ratio=1", "play=", "condition="),
				fields(rows(PLAN, "closes"), 0));
	}

	@Test
	void aPartIsTakenOut() {
		changes(STOCK, "layers", rows -> rows.remove(1), STOCK.replace("\n\t\tskin foil 0.1 mm", ""));
		changes(STOCK, "layers", rows -> rows.remove(0), STOCK.replace("\n\t\tbase felt 1 mm", ""));
		changes(PLAN, "pieces", rows -> rows.remove(0), PLAN.replace("0.5 from 1 to 3, ", ""));
		changes(PLAN, "bore", rows -> rows.remove(1), PLAN.replace(", 18 mm at 100 mm", ""));
	}

	@Test
	void aPartIsSaidAgainBehindItself() {
		changes(STOCK, "layers", rows -> rows.again(1),
				STOCK.replace("\t\tskin foil 0.1 mm", "\t\tskin foil 0.1 mm\n\t\tskin foil 0.1 mm"));
		changes(PLAN, "pieces", rows -> rows.again(1), PLAN.replace("4 to 6", "4 to 6, 1 from 4 to 6"));
	}

	@Test
	void twoPartsChangePlacesAndTheRemarkStays() {
		changes(STOCK, "layers", rows -> rows.swap(0),
				STOCK.replace("base felt 1 mm //", "X //").replace("skin foil 0.1 mm", "base felt 1 mm")
						.replace("X", "skin foil 0.1 mm"));
	}
}
