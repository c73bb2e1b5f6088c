package padwright.views.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import padwright.language.edit.TextEdit;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.canvas.Bar;
import padwright.views.canvas.Colours;
import padwright.views.canvas.MarkImages;
import padwright.views.map.KeyState;
import padwright.views.map.StateMarks;
import padwright.views.rows.KeyColumn;
import padwright.views.rows.KeyRow;
import padwright.views.rows.KeyRows;
import padwright.views.rows.RowTyping;
import padwright.views.rows.RowWriting;

/** Every key of a plan in a row: to sort by a click on a heading, to filter, to type into and to copy. */
public final class KeyTable extends Composite {

	private final Bar bar;
	private final Text filter;
	private final Table table;
	private final Label status;
	private final MarkImages<KeyState> marks;
	private final CellEditing editing;
	private Palette palette;
	private KeyRows all = new KeyRows(List.of());
	private List<KeyRow> shown = List.of();
	private KeyColumn sort = KeyColumn.KEY;
	private boolean descending;
	private Consumer<String> onSelect = key -> {
	};
	private Consumer<String> onJump = key -> {
	};
	private Predicate<List<TextEdit>> onEdit = edits -> true;
	private final RowWriting writing = new RowWriting(edits -> onEdit.test(edits));

	public KeyTable(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		bar = new Bar(this);
		filter = new Text(bar.row(), SWT.SEARCH | SWT.ICON_CANCEL);
		filter.setMessage(Messages.of("table.filter"));
		filter.setLayoutData(new RowData(220, SWT.DEFAULT));
		filter.addListener(SWT.Modify, event -> refresh());
		Bar.name(filter, Messages.of("table.filter"));
		bar.button(Messages.of("table.copy"), Messages.of("table.copyTip"), this::copy);
		table = new Table(this, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
		table.setHeaderVisible(true);
		Bar.fill(table);
		Bar.name(table, Messages.of("table.name"));
		marks = new MarkImages<>(table, palette, StateMarks::draw);
		Arrays.stream(KeyColumn.values()).forEach(this::addColumn);
		table.addListener(SWT.Selection, event -> selected().stream().findFirst()
				.ifPresent(row -> onSelect.accept(row.name())));
		table.addListener(SWT.KeyDown, this::pressed);
		status = new Label(this, SWT.NONE);
		GridData line = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
		line.horizontalIndent = 8;
		status.setLayoutData(line);
		editing = new CellEditing(table, this::write);
		setPalette(palette);
	}

	private void addColumn(KeyColumn column) {
		TableColumn head = new TableColumn(table, column.isFigure() ? SWT.RIGHT : SWT.LEFT);
		head.setText(column.heading());
		head.setWidth(column.width());
		head.setMoveable(true);
		head.setToolTipText(Messages.of(column.isEditable() ? "table.editTip" : "table.sortTip"));
		head.addListener(SWT.Selection, event -> {
			descending = sort == column && !descending;
			sort = column;
			refresh();
		});
	}

	/**
	 * Shows the keys of a plan, as its text says now.
	 *
	 * @param selected the key whose row is selected and brought into sight, if any; listeners are not told
	 */
	public void show(KeyRows rows, Optional<String> selected) {
		all = rows;
		writing.show(rows);
		Arrays.stream(KeyColumn.values()).forEach(column -> table.getColumn(column.ordinal()).setText(column.heading()));
		refresh();
		selected.ifPresent(this::select);
	}

	/** Told the name of the key whose row is selected. */
	public void onSelect(Consumer<String> listener) {
		onSelect = listener;
	}

	/** Told the name of a key whose text is to be gone to: only by a key that says so (F3). */
	public void onJump(Consumer<String> listener) {
		onJump = listener;
	}

	/**
	 * Told of each cell changed as one list of edits of the plan's text. False where it could not be written, because the
	 * text is another meanwhile.
	 */
	public void onEdit(Predicate<List<TextEdit>> listener) {
		onEdit = listener;
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		setBackground(Colours.of(palette.ground()));
		bar.setPalette(palette);
		status.setBackground(Colours.of(palette.ground()));
		status.setForeground(Colours.of(palette.error()));
		TableColours.apply(table, palette);
		Arrays.stream(table.getItems()).forEach(item -> item.setImage(KeyColumn.KEY.ordinal(), null));
		marks.setPalette(palette);
		refresh();
	}

	/** Puts the selected rows, or all that are shown, on the clipboard for a spreadsheet. */
	public void copy() {
		List<KeyRow> rows = selected().isEmpty() ? shown : selected();
		Clipboard clipboard = new Clipboard(getDisplay());
		clipboard.setContents(new Object[] { KeyRows.tabSeparated(rows) },
				new Transfer[] { TextTransfer.getInstance() });
		clipboard.dispose();
	}

	/** For a menu. */
	public Table table() {
		return table;
	}

	@Override
	public boolean setFocus() {
		return table.setFocus();
	}

	private List<KeyRow> selected() {
		return Arrays.stream(table.getSelectionIndices()).sorted().mapToObj(shown::get).toList();
	}

	private void select(String key) {
		for (int index = 0; index < shown.size(); index++) {
			if (shown.get(index).name().equals(key)) {
				table.setSelection(index);
			}
		}
	}

	private void refresh() {
		List<String> before = selected().stream().map(KeyRow::name).toList();
		shown = all.filtered(filter.getText()).sorted(sort, descending).rows();
		table.setSortColumn(table.getColumn(sort.ordinal()));
		table.setSortDirection(descending ? SWT.DOWN : SWT.UP);
		table.setRedraw(false);
		table.setItemCount(shown.size());
		for (int index = 0; index < shown.size(); index++) {
			fill(table.getItem(index), shown.get(index));
		}
		table.deselectAll();
		before.forEach(this::select);
		widen();
		table.setRedraw(true);
	}

	private void widen() {
		KeyColumn.WHOLE.forEach(
				column -> TextWidths.show(table, column.ordinal(), shown.stream().map(column::text).toList(), 0));
	}

	private void fill(TableItem item, KeyRow row) {
		for (KeyColumn column : KeyColumn.values()) {
			item.setText(column.ordinal(), column.text(row));
			if (column == KeyColumn.KEY) {
				item.setImage(column.ordinal(), column.mark(row).map(marks::of).orElse(null));
			}
			item.setForeground(column.ordinal(), Colours.of(
					column == KeyColumn.STATE || column == KeyColumn.FINDINGS ? row.state().ink(palette)
							: palette.ink()));
		}
	}

	private void pressed(Event event) {
		boolean control = (event.stateMask & SWT.MOD1) != 0;
		if (control && (event.keyCode == 'c' || event.keyCode == 'C')) {
			copy();
		} else if (control && event.keyCode == 'f') {
			filter.setFocus();
		} else if (event.keyCode == SWT.F2 || event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
			boolean shims = (event.stateMask & SWT.MOD2) != 0;
			editing.begin(table.getSelectionIndex(), (shims ? KeyColumn.SHIMS : KeyColumn.READINGS).ordinal());
		} else if (event.keyCode == SWT.F3) {
			selected().stream().findFirst().ifPresent(row -> onJump.accept(row.name()));
		} else if (!control && RowTyping.takes(event.character)) {
			selected().stream().findFirst().flatMap(RowTyping::of).ifPresent(typing -> editing
					.begin(table.getSelectionIndex(), typing.press(event.character), this::choose));
			event.doit = false;
		}
	}

	/** Goes to a row, as a click on it does. */
	private void choose(int index) {
		if (index < shown.size()) {
			table.setSelection(index);
			onSelect.accept(shown.get(index).name());
		}
	}

	/** Nothing where it is or will be written; else why not. */
	private Optional<String> write(int index, int column, String typed) {
		Optional<String> wrong = writing.write(shown.get(index).name(), KeyColumn.values()[column], typed);
		status.setText(wrong.orElse(""));
		return wrong;
	}
}
