package padwright.exchange.csv;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.exchange.tree.Branch;
import padwright.exchange.tree.ExchangeException;
import padwright.exchange.tree.Leaf;
import padwright.exchange.tree.Leaf.Syntax;
import padwright.exchange.tree.Listing;
import padwright.exchange.tree.Tree;

/** Reads a document from a table as {@link TableWriter} lays it out; the order of columns is free. */
final class TableReader {

	/** A part as it grows, row by row. */
	private static final class Node {

		private final Map<String, Node> parts = new LinkedHashMap<>();
		private final int line;
		private String text;

		private Node(int line) {
			this.line = line;
		}

		private Tree tree() {
			if (text != null) {
				return new Leaf(text, Syntax.CELL, line);
			}
			if (!parts.isEmpty() && parts.keySet().stream().allMatch(TableReader::isNumber)) {
				return new Listing(parts.values().stream().map(Node::tree).toList(), line);
			}
			Map<String, Tree> trees = new LinkedHashMap<>();
			parts.forEach((name, part) -> trees.put(name, part.tree()));
			return new Branch(trees, line);
		}
	}

	private final Node document = new Node(1);
	private final List<String> heads;
	private final int what;

	private TableReader(List<String> heads) throws ExchangeException {
		this.heads = heads;
		this.what = heads.indexOf(TableWriter.ROW);
		if (what < 0) {
			throw new ExchangeException(1, "the column \"" + TableWriter.ROW + "\" is missing, which says what each row is");
		}
		for (String head : heads) {
			if (!head.isEmpty() && heads.indexOf(head) != heads.lastIndexOf(head)) {
				throw new ExchangeException(1, "there are two columns \"" + head + "\"; take one away");
			}
		}
	}

	static Branch document(List<CsvRow> rows) throws ExchangeException {
		if (rows.isEmpty()) {
			throw new ExchangeException(1, "the table is empty");
		}
		TableReader reader = new TableReader(rows.get(0).cells().stream().map(String::strip).toList());
		for (CsvRow row : rows.subList(1, rows.size())) {
			reader.add(row);
		}
		return new Branch(((Branch) reader.document.tree()).parts(), 1);
	}

	private void add(CsvRow row) throws ExchangeException {
		if (row.cells().size() > heads.size()) {
			throw new ExchangeException(row.line(), "there are " + row.cells().size() + " cells under " + heads.size()
					+ " heads; is a cell with a comma in quotes?");
		}
		Node node = node(row);
		for (int column = 0; column < heads.size(); column++) {
			String cell = FormulaGuard.bare(row.cell(column));
			if (column != what && !cell.isEmpty()) {
				put(node, heads.get(column), cell, row.line());
			}
		}
	}

	private Node node(CsvRow row) throws ExchangeException {
		String[] names = row.cell(what).strip().split("\\.");
		if (names.length == 1) {
			return names[0].equals(TableWriter.DOCUMENT) ? document : added(document, names[0], row.line());
		}
		Node elements = document.parts.get(names[0]);
		if (names.length != 2 || elements == null) {
			throw new ExchangeException(row.line(), "\"" + row.cell(what) + "\" names no row that could stand here;"
					+ " what it is a part of must stand before it");
		}
		return added(last(elements), names[1], row.line());
	}

	private static Node last(Node elements) {
		return new ArrayList<>(elements.parts.values()).get(elements.parts.size() - 1);
	}

	private static Node added(Node owner, String list, int line) {
		Node elements = owner.parts.computeIfAbsent(list, unseen -> new Node(line));
		Node element = new Node(line);
		elements.parts.put(String.valueOf(elements.parts.size() + 1), element);
		return element;
	}

	private static void put(Node node, String head, String cell, int line) throws ExchangeException {
		Node part = node;
		for (String name : head.split("\\.")) {
			part = part.parts.computeIfAbsent(name, unseen -> new Node(line));
			if (part.text != null) {
				throw new ExchangeException(line, "the column \"" + head + "\" is part of a cell that is filled already");
			}
		}
		part.text = cell;
	}

	private static boolean isNumber(String name) {
		return name.chars().allMatch(c -> c >= '0' && c <= '9');
	}
}
