package padwright.views.rows;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import padwright.language.edit.TextEdit;

/**
 * The way of typed cells into the text of a plan. A cell typed before the text was read again, or while it could not be
 * written, waits for it: nothing typed fast is lost.
 */
public final class RowWriting {

	private record Cell(String key, KeyColumn column, String typed) {
	}

	private final Deque<Cell> cells = new ArrayDeque<>();
	private final Predicate<List<TextEdit>> onEdit;
	private KeyRows shown = new KeyRows(List.of());
	private boolean waiting;

	/** @param onEdit false where the text is another meanwhile: the cell is handed over again once it is read */
	public RowWriting(Predicate<List<TextEdit>> onEdit) {
		this.onEdit = onEdit;
	}

	/** The rows as the text says now. */
	public void show(KeyRows rows) {
		if (rows != shown) {
			shown = rows;
			waiting = false;
			handOver();
		}
	}

	/** Writes what was typed into a cell, now or as soon as it can be; why not, where it cannot be said. */
	public Optional<String> write(String key, KeyColumn column, String typed) {
		Cell cell = new Cell(key, column, typed);
		try {
			edits(cell);
		} catch (IllegalArgumentException wrong) {
			return Optional.of(wrong.getMessage());
		}
		cells.add(cell);
		handOver();
		return Optional.empty();
	}

	private void handOver() {
		while (!waiting && !cells.isEmpty()) {
			Cell cell = cells.poll();
			List<TextEdit> edits = editsNow(cell);
			if (!edits.isEmpty()) {
				waiting = true;
				if (!onEdit.test(edits)) {
					cells.addFirst(cell);
				}
			}
		}
	}

	/** A row that went away meanwhile cannot be written. */
	private List<TextEdit> editsNow(Cell cell) {
		try {
			return edits(cell);
		} catch (IllegalArgumentException gone) {
			return List.of();
		}
	}

	private List<TextEdit> edits(Cell cell) {
		return shown.rows().stream().filter(row -> row.name().equals(cell.key)).findFirst()
				.map(row -> RowEdit.of(row, cell.column, cell.typed)).orElse(List.of());
	}
}
