package padwright.views.table;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.canvas.Bar;
import padwright.views.canvas.Colours;
import padwright.views.report.ReportRows;
import padwright.workup.report.Report;
import padwright.workup.report.ReportTable;
import padwright.workup.report.ReportTable.Row;

/** A report: one of its tables at a time, to sort by a click on a heading, to filter, to copy and to print. */
public final class ReportControl extends Composite {

	private static final int WIDEST = 340;

	private final Bar bar;
	private final Combo choice;
	private final Text filter;
	private final Label leads;
	private final Label notes;
	private Table table;
	private Palette palette;
	private Report report = new Report("", List.of(), List.of());
	private ReportRows shown = new ReportRows(List.of(), List.of());
	private int sort = -1;
	private boolean descending;
	private Consumer<Row> onOpen = row -> {
	};
	private Runnable onPrint = () -> {
	};
	private Runnable onAgain = () -> {
	};

	public ReportControl(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		bar = new Bar(this);
		choice = new Combo(bar.row(), SWT.READ_ONLY);
		choice.addListener(SWT.Selection, chosen -> choose());
		Bar.name(choice, Messages.of("report.choice"));
		filter = new Text(bar.row(), SWT.SEARCH | SWT.ICON_CANCEL);
		filter.setMessage(Messages.of("report.filter"));
		filter.setLayoutData(new RowData(180, SWT.DEFAULT));
		filter.addListener(SWT.Modify, typed -> refresh());
		Bar.name(filter, Messages.of("report.filter"));
		bar.button(Messages.of("table.copy"), Messages.of("report.copyTip"), this::copy);
		bar.button(Messages.of("report.print"), Messages.of("report.printTip"), () -> onPrint.run());
		bar.button(Messages.of("report.again"), Messages.of("report.againTip"), () -> onAgain.run());
		leads = words();
		table = newTable();
		notes = words();
		setPalette(palette);
	}

	private Label words() {
		Label label = new Label(this, SWT.WRAP);
		GridData line = new GridData(SWT.FILL, SWT.TOP, true, false);
		line.horizontalIndent = 8;
		line.widthHint = 1;
		label.setLayoutData(line);
		return label;
	}

	private Table newTable() {
		Table made = new Table(this, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
		made.setHeaderVisible(true);
		Bar.fill(made);
		Bar.name(made, Messages.of("report.table"));
		made.addListener(SWT.DefaultSelection, opened -> open((TableItem) opened.item));
		made.addListener(SWT.KeyDown, this::pressed);
		return made;
	}

	/** Shows a report, beginning with its first table that has rows. */
	public void show(Report next) {
		report = next;
		choice.setItems(next.tables().stream().map(one -> one.title().isEmpty() ? next.title() : one.title())
				.toArray(String[]::new));
		choice.select(IntStream.range(0, next.tables().size()).filter(index -> !next.tables().get(index).rows().isEmpty())
				.findFirst().orElse(0));
		hide(choice, next.tables().size() < 2);
		leads.setText(String.join(" ", next.leads()));
		hide(leads, next.leads().isEmpty());
		choose();
	}

	private static void hide(Control control, boolean hidden) {
		control.setVisible(!hidden);
		if (control.getLayoutData() instanceof GridData line) {
			line.exclude = hidden;
		} else {
			RowData place = new RowData(WIDEST, SWT.DEFAULT);
			place.exclude = hidden;
			control.setLayoutData(place);
		}
	}

	private void choose() {
		sort = -1;
		descending = false;
		Table before = table;
		table = newTable();
		table.moveAbove(before);
		before.dispose();
		for (int index = 0; index < chosen().columns().size(); index++) {
			addColumn(index);
		}
		notes.setText(String.join("\n", chosen().notes()));
		hide(notes, chosen().notes().isEmpty());
		TableColours.apply(table, palette);
		refresh();
		Arrays.stream(table.getColumns()).forEach(column -> {
			column.pack();
			column.setWidth(Math.min(column.getWidth() + 12, WIDEST));
		});
		layout(true, true);
	}

	private ReportTable chosen() {
		return report.tables().isEmpty() ? new ReportTable("", List.of(), List.of(), List.of())
				: report.tables().get(Math.max(0, choice.getSelectionIndex()));
	}

	private void addColumn(int index) {
		ReportTable.Column column = chosen().columns().get(index);
		TableColumn head = new TableColumn(table, column.figure() ? SWT.RIGHT : SWT.LEFT);
		head.setText(column.heading().strip());
		head.setToolTipText(Messages.of("table.sortTip"));
		head.setMoveable(true);
		head.addListener(SWT.Selection, event -> {
			descending = sort == index && !descending;
			sort = index;
			refresh();
		});
	}

	private void refresh() {
		shown = ReportRows.of(chosen()).filtered(filter.getText());
		if (sort >= 0) {
			shown = shown.sorted(sort, descending);
			table.setSortColumn(table.getColumn(sort));
			table.setSortDirection(descending ? SWT.DOWN : SWT.UP);
		}
		table.setRedraw(false);
		table.removeAll();
		for (Row row : shown.rows()) {
			TableItem item = new TableItem(table, SWT.NONE);
			item.setText(row.cells().stream().map(String::strip).toArray(String[]::new));
			item.setData(row);
		}
		table.setRedraw(true);
	}

	private void open(TableItem item) {
		if (item != null && item.getData() instanceof Row row && (row.key().isPresent() || row.plan().isPresent())) {
			onOpen.accept(row);
		}
	}

	private void pressed(Event event) {
		boolean control = (event.stateMask & SWT.MOD1) != 0;
		if (control && (event.keyCode == 'c' || event.keyCode == 'C')) {
			copy();
		} else if (control && event.keyCode == 'f') {
			filter.setFocus();
		}
	}

	/** Puts the selected rows, or all that are shown, on the clipboard for a spreadsheet. */
	public void copy() {
		List<Row> selected = Arrays.stream(table.getSelection()).map(item -> (Row) item.getData()).toList();
		Clipboard clipboard = new Clipboard(getDisplay());
		clipboard.setContents(new Object[] {
				new ReportRows(shown.columns(), selected.isEmpty() ? shown.rows() : selected).tabSeparated() },
				new Transfer[] { TextTransfer.getInstance() });
		clipboard.dispose();
	}

	/** Told the row that is double-clicked or entered, if it tells of a key or plan. */
	public void onOpen(Consumer<Row> listener) {
		onOpen = listener;
	}

	public void onPrint(Runnable listener) {
		onPrint = listener;
	}

	/** Told that the report is to be made anew. */
	public void onAgain(Runnable listener) {
		onAgain = listener;
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		setBackground(Colours.of(palette.ground()));
		bar.setPalette(palette);
		for (Label label : new Label[] { leads, notes }) {
			label.setBackground(Colours.of(palette.ground()));
			label.setForeground(Colours.of(palette.ink()));
		}
		TableColours.apply(table, palette);
	}

	/** All that can be read, for tests. */
	public String text() {
		return Stream.of(Stream.of(report.title()), report.leads().stream(), report.tables().stream()
				.flatMap(one -> Stream.of(Stream.of(one.title()), one.rows().stream().flatMap(row -> row.cells().stream()),
						one.notes().stream()).flatMap(lines -> lines)))
				.flatMap(lines -> lines).collect(Collectors.joining("\n"));
	}

	@Override
	public boolean setFocus() {
		return table.setFocus();
	}
}
