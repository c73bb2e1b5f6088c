package padwright.exchange.csv;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.exchange.tree.Branch;
import padwright.exchange.tree.Leaf;
import padwright.exchange.tree.Listing;
import padwright.exchange.tree.Tree;
import padwright.exchange.tree.Words;

/**
 * Lays a document out as a table. The first column says what a row is: {@code plans} for a plan, {@code plans.keys} for
 * a row of the plan before it. A part of a part stands under a dotted head, as {@code hole.diameter}; parts of a list
 * of parts are counted, as {@code couplings.1.driven}; values of a list of values stand in one cell, blanks between.
 */
final class TableWriter {

	static final String ROW = "row";
	static final String DOCUMENT = "document";

	private final Set<String> heads = new LinkedHashSet<>(List.of(ROW));
	private final List<Map<String, String>> rows = new ArrayList<>();

	private TableWriter() {
	}

	/** Heads and rows. */
	static List<List<String>> table(Branch document) {
		TableWriter table = new TableWriter();
		Map<String, String> head = table.row(DOCUMENT);
		document.parts().forEach((name, part) -> {
			if (part instanceof Listing listing) {
				listing.parts().forEach(element -> table.addElement(name, (Branch) element));
			} else {
				table.put(head, name, part);
			}
		});
		return table.cells();
	}

	private Map<String, String> row(String what) {
		Map<String, String> row = new LinkedHashMap<>();
		row.put(ROW, what);
		rows.add(row);
		return row;
	}

	/** A system, stock or plan in a row, and each of its parts that there may be many of in a row of its own. */
	private void addElement(String what, Branch element) {
		Map<String, String> row = row(what);
		element.parts().forEach((name, part) -> {
			if (!isOfParts(part)) {
				put(row, name, part);
			}
		});
		element.parts().forEach((name, part) -> {
			if (isOfParts(part)) {
				((Listing) part).parts().forEach(each -> putAll(row(what + "." + name), (Branch) each));
			}
		});
	}

	private void putAll(Map<String, String> row, Branch element) {
		element.parts().forEach((name, part) -> put(row, name, part));
	}

	private static boolean isOfParts(Tree part) {
		return part instanceof Listing listing && listing.parts().get(0) instanceof Branch;
	}

	private void put(Map<String, String> row, String head, Tree part) {
		if (part instanceof Branch branch && branch.parts().isEmpty()) {
			put(row, head, Leaf.string(Leaf.EMPTY_PART));
		} else if (part instanceof Branch branch) {
			branch.parts().forEach((name, inner) -> put(row, head + "." + name, inner));
		} else if (isOfParts(part)) {
			List<Tree> parts = ((Listing) part).parts();
			for (int index = 0; index < parts.size(); index++) {
				put(row, head + "." + (index + 1), parts.get(index));
			}
		} else {
			heads.add(head);
			row.put(head, part instanceof Leaf leaf ? leaf.text() : words((Listing) part));
		}
	}

	private static String words(Listing values) {
		return Words.joined(values.parts().stream().map(value -> ((Leaf) value).text()).toList());
	}

	private List<List<String>> cells() {
		List<List<String>> cells = new ArrayList<>();
		cells.add(List.copyOf(heads));
		rows.forEach(row -> cells.add(heads.stream().map(head -> row.getOrDefault(head, "")).toList()));
		return cells;
	}
}
