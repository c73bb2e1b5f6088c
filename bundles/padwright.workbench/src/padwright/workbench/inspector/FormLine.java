package padwright.workbench.inspector;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.language.edit.ListRows;

/**
 * One line of a form.
 *
 * @param cells beside each other; nothing where a grid has no figure
 * @param headings of a grid below, instead of cells
 * @param unit of the values; empty for none
 * @param listed the row of a list that the line is, which can be taken out, said again and moved
 */
record FormLine(String label, List<Optional<FormCell>> cells, List<String> headings, String unit,
		Optional<Listed> listed) {

	private static final String INDENT = "    ";

	/** A row of a list. */
	record Listed(ListRows rows, int row) {
	}

	static FormLine of(FormCell cell) {
		return new FormLine(cell.name(), List.of(Optional.of(cell)), List.of(), FieldWords.unit(cell.field()),
				Optional.empty());
	}

	static FormLine headings(String label, List<String> headings) {
		return new FormLine(label, List.of(), headings, "", Optional.empty());
	}

	static FormLine grid(String label, List<Optional<FormCell>> cells, String unit) {
		return new FormLine(label, cells, List.of(), unit, Optional.empty());
	}

	static FormLine listed(String label, List<FormCell> cells, Listed row) {
		return new FormLine(label, cells.stream().map(Optional::of).toList(), List.of(), "", Optional.of(row));
	}

	/** The same below the line of the part that it is about, whose name it need not say again. */
	FormLine under(String part) {
		String rest = label.startsWith(part + ": ") ? label.substring(part.length() + 2) : label;
		return new FormLine(INDENT + rest, cells, headings, unit, listed);
	}

	boolean isSingle() {
		return headings.isEmpty() && cells.size() == 1 && listed.isEmpty();
	}

	/** What lines have in common that are drawn by the same controls. */
	List<Object> shape() {
		Stream<Object> shapes = cells.stream().map(cell -> cell.<Object>map(
				shown -> List.of(shown.name(), shown.field().element().eClass())).orElse(""));
		return List.of(label, headings, shapes.toList(), listed.map(row -> row.rows().size()).orElse(0));
	}
}
