package padwright.views.table;

import java.util.Optional;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableEditor;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import padwright.views.rows.KeyColumn;
import padwright.views.rows.RowTyping;

/**
 * Typing into the cells of a table. A double click, Enter or F2 begins (Shift+F2 at the shims), as does the stroke of a
 * reading, which replaces what the cell says: the last one writes the row and goes to the next. Enter writes and goes to
 * the next row, too, Tab to the other cell of the row, Esc leaves the cell as it was.
 */
final class CellEditing {

	/** Writes a cell; nothing where that went well, else why it did not. */
	@FunctionalInterface
	interface Writer {
		Optional<String> write(int row, int column, String typed);
	}

	private final Table table;
	private final Writer writer;
	private final TableEditor editor;
	private Text field;
	private int row;
	private int column;
	private Optional<RowTyping> typing = Optional.empty();
	private IntConsumer next = index -> {
	};

	CellEditing(Table table, Writer writer) {
		this.table = table;
		this.writer = writer;
		editor = new TableEditor(table);
		editor.grabHorizontal = true;
		table.addListener(SWT.MouseDoubleClick, this::doubleClick);
	}

	private void doubleClick(Event event) {
		Point at = new Point(event.x, event.y);
		TableItem item = table.getItem(at);
		for (int index = 0; item != null && index < table.getColumnCount(); index++) {
			if (item.getBounds(index).contains(at)) {
				begin(table.indexOf(item),
						KeyColumn.values()[index].isEditable() ? index : KeyColumn.READINGS.ordinal());
			}
		}
	}

	/**
	 * Begins to type readings in the place of what a row says, one stroke each.
	 *
	 * @param onward told of the next row once all hours are typed
	 */
	void begin(int index, RowTyping first, IntConsumer onward) {
		begin(index, KeyColumn.READINGS.ordinal());
		if (field != null) {
			next = onward;
			field.addListener(SWT.KeyDown, this::stroke);
			typed(first);
		}
	}

	private void typed(RowTyping now) {
		typing = Optional.of(now);
		field.setText(now.text());
		field.setSelection(now.text().length());
		if (now.isFull() && writer.write(row, column, now.text()).isEmpty()) {
			int after = row + 1;
			end();
			next.accept(after);
		}
	}

	/** Whoever changes the text otherwise types it in full from then on. */
	private void stroke(Event event) {
		boolean control = (event.stateMask & (SWT.MOD1 | SWT.MOD3)) != 0;
		typing = typing.filter(now -> now.text().equals(field.getText()) && !control);
		if (typing.isPresent() && (event.character == ' ' || event.character == SWT.BS || RowTyping.takes(event.character))) {
			event.doit = false;
			typed(typing.get().press(event.character));
		}
	}

	/** Begins to edit a cell; nothing happens where there is no such row or its column cannot be typed into. */
	void begin(int index, int columnIndex) {
		if (index < 0 || index >= table.getItemCount() || !KeyColumn.values()[columnIndex].isEditable()) {
			return;
		}
		end();
		row = index;
		column = columnIndex;
		TableItem item = table.getItem(index);
		table.setSelection(index);
		field = new Text(table, SWT.NONE);
		field.setText(item.getText(columnIndex));
		field.selectAll();
		field.addListener(SWT.Traverse, this::traverse);
		field.addListener(SWT.FocusOut, event -> end());
		editor.setEditor(field, item, columnIndex);
		field.setFocus();
	}

	private void traverse(Event event) {
		switch (event.detail) {
		case SWT.TRAVERSE_ESCAPE -> end();
		case SWT.TRAVERSE_RETURN -> commit(row + 1, column);
		case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS -> commit(row,
				(column == KeyColumn.READINGS.ordinal() ? KeyColumn.SHIMS : KeyColumn.READINGS).ordinal());
		default -> {
			return;
		}
		}
		event.doit = false;
	}

	private void commit(int nextRow, int nextColumn) {
		Optional<String> wrong = writer.write(row, column, field.getText());
		if (wrong.isPresent()) {
			field.setToolTipText(wrong.get());
			field.selectAll();
		} else {
			end();
			begin(nextRow, nextColumn);
		}
	}

	private void end() {
		Text open = field;
		field = null;
		if (open != null && !open.isDisposed()) {
			boolean focused = open.isFocusControl();
			open.dispose();
			if (focused) {
				table.setFocus();
			}
		}
	}
}
