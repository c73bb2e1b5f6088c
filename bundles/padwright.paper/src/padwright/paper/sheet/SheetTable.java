package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;

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

/**
 * A table that may run over pages.
 *
 * @param heads of the columns
 * @param widths of the columns, mm
 */
record SheetTable(Typesetter typesetter, List<String> heads, List<Double> widths) {

	private static final int ROWS_IN_A_BLOCK = 35;
	private static final double ROW = 4.3;
	private static final double SIZE = 2.9;
	private static final double TITLE = 4.2;
	private static final double PADDING = 1.2;

	/** The rows in blocks that fit on a page, each under the heads; the title above the first. */
	List<Part> parts(String title, List<List<String>> rows) {
		List<Part> parts = new ArrayList<>();
		for (int first = 0; first < rows.size(); first += ROWS_IN_A_BLOCK) {
			parts.add(block(first == 0 ? title : title + ", continued",
					rows.subList(first, Math.min(first + ROWS_IN_A_BLOCK, rows.size()))));
		}
		return parts;
	}

	private Part block(String title, List<List<String>> rows) {
		double top = TITLE * 1.9;
		List<Element> elements = new ArrayList<>();
		elements.add(Text.of(title, 0, TITLE * 1.4, Face.BOLD, TITLE));
		elements.addAll(row(heads, top, Face.CONDENSED_BOLD));
		for (List<String> cells : rows) {
			top += ROW;
			elements.addAll(row(cells, top, Face.CONDENSED));
		}
		return new FixedPart(top + ROW + TITLE, elements);
	}

	private List<Element> row(List<String> cells, double top, Face face) {
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
