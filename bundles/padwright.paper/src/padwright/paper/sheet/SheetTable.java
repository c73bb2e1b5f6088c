package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.page.FixedPart;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;

/**
 * A table that may run over pages. Columns in which nothing stands are left out.
 *
 * @param width of the page between its margins, mm
 */
record SheetTable(Typesetter typesetter, SheetList list, double width) {

	private static final int ROWS_IN_A_BLOCK = 35;
	private static final double ROW = 4.3;
	private static final double SIZE = 2.9;
	private static final double TITLE = 4.2;
	private static final double PADDING = 1.2;

	/** The rows in blocks that fit on a page, each under the heads; the title above the first. */
	List<Part> parts() {
		List<Integer> columns = IntStream.range(0, list.heads().size())
				.filter(column -> list.rows().stream().anyMatch(row -> !row.get(column).isEmpty())).boxed().toList();
		List<String> heads = chosen(list.heads(), columns);
		List<List<String>> rows = list.rows().stream().map(row -> chosen(row, columns)).toList();
		List<Double> widths = new ColumnWidths(typesetter, SIZE, PADDING).of(heads, rows, width);
		List<Part> parts = new ArrayList<>();
		for (int first = 0; first < rows.size(); first += ROWS_IN_A_BLOCK) {
			parts.add(block(first == 0 ? list.title() : Messages.of("sheet.continued", list.title()), heads,
					rows.subList(first, Math.min(first + ROWS_IN_A_BLOCK, rows.size())), widths));
		}
		return parts;
	}

	private static List<String> chosen(List<String> cells, List<Integer> columns) {
		return columns.stream().map(cells::get).toList();
	}

	private Part block(String title, List<String> heads, List<List<String>> rows, List<Double> widths) {
		double top = TITLE * 1.9;
		List<Element> elements = new ArrayList<>();
		elements.add(Text.of(title, 0, TITLE * 1.4, Face.BOLD, TITLE));
		elements.addAll(row(heads, top, Face.CONDENSED_BOLD, widths));
		for (List<String> cells : rows) {
			top += ROW;
			elements.addAll(row(cells, top, Face.CONDENSED, widths));
		}
		return new FixedPart(top + ROW + TITLE, elements);
	}

	private List<Element> row(List<String> cells, double top, Face face, List<Double> widths) {
		List<Element> elements = new ArrayList<>();
		double left = 0;
		for (int column = 0; column < cells.size(); column++) {
			if (!cells.get(column).isEmpty()) {
				elements.add(typesetter.line(cells.get(column), left, top + ROW * 0.72, face, SIZE,
						widths.get(column) - PADDING));
			}
			left += widths.get(column);
		}
		elements.add(new Drawn(new Line(0, top + ROW, left, top + ROW), Style.stroked(Ink.grey(120), 0.12)));
		return elements;
	}
}
