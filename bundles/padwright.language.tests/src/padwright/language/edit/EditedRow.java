package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.engine.film.PartialShim;
import padwright.language.TestShop;
import padwright.model.Lengths;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlacedPieces;

/** A row of a plan before and after an edit of its text. */
final class EditedRow {

	static final String SHOP = """
			system Flute {
				key A cup 16.5 mm
				key B cup 16.5 mm
			}
			stock Bench {
				material polyester { }
				film Clear polyester { 0.5 1 2 5 7.5 thou }
				feeler Tape 0.5 thou
				feeler Leaf 1 thou
			}
			""";
	private static final String HEAD = "plan P for Flute with Bench {\n\tread at 12 3 6 9\n";
	private static final String TAIL = "\n\tkey B empty 15 felt . . . . // neighbour\n}\n";

	private EditedRow() {
	}

	/** The row of key A in a plan of which it is the first row. */
	static KeyService parse(String unit, String row) {
		return rows(unit, row).get(0).service();
	}

	private static List<KeyJob> rows(String unit, String row) {
		TestShop shop = TestShop.of("shop.plan", text(unit, row));
		assertEquals(List.of(), shop.resource("shop.plan").getErrors());
		return new ServicePlan(shop.document("shop.plan").getPlans().get(0)).jobs();
	}

	private static String text(String unit, String row) {
		return unit + SHOP + HEAD + row + TAIL;
	}

	/** The text of the row once edited; all else must be as it was. */
	static String edited(String unit, String row, List<TextEdit> edits) {
		String all = TextEdit.apply(edits, text(unit, row));
		String before = unit + SHOP + HEAD;
		assertEquals(before, all.substring(0, before.length()));
		assertEquals(TAIL, all.substring(all.length() - TAIL.length()));
		assertEquals(List.of(), TestShop.of("shop.plan", all).resource("shop.plan").getErrors());
		return all.substring(before.length(), all.length() - TAIL.length());
	}

	/** All that a row says, but for its readings and shims. */
	static String rest(KeyService row) {
		return row.getKey().getName() + Lengths.of(row.getEmpty()) + row.getRemark() + row.isSetFound()
				+ row.getRounds().size();
	}

	static List<PartialShim> pieces(Round round) {
		return PlacedPieces.of(round);
	}

	/** Checks that a text is as before outside the row that stood at {@code node}. */
	static void assertOnlyChangedIn(INode node, String before, String after) {
		int tail = before.length() - node.getOffset() - node.getLength();
		assertEquals(before.substring(0, node.getOffset()), after.substring(0, node.getOffset()));
		assertEquals(before.substring(before.length() - tail), after.substring(after.length() - tail));
	}

	static INode node(KeyService row) {
		return NodeModelUtils.findActualNodeFor(row);
	}
}
