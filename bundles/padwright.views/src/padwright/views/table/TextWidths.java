package padwright.views.table;

import java.util.List;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** Makes columns of a table as wide as their texts. A table that was not painted yet does not know it itself. */
final class TextWidths {

	private static final int MARGIN = 14;
	/** Headings may be bold, and one has an arrow. */
	private static final int HEADING_MARGIN = 26;

	private TextWidths() {
	}

	/**
	 * Makes a column so wide that its heading and all of its texts are seen whole; one that was drawn wider stays.
	 *
	 * @param before what stands before the text in each cell, such as a box to tick, in pixels
	 */
	static void show(Table table, int index, List<String> texts, int before) {
		TableColumn column = table.getColumn(index);
		GC pen = new GC(table);
		int widest = texts.stream().mapToInt(text -> pen.textExtent(text).x + before).max().orElse(0);
		int wanted = Math.max(widest + MARGIN, pen.textExtent(column.getText()).x + HEADING_MARGIN);
		pen.dispose();
		if (column.getWidth() < wanted) {
			column.setWidth(wanted);
		}
	}
}
