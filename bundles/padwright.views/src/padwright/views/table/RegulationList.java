package padwright.views.table;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.canvas.Bar;
import padwright.views.canvas.Colours;
import padwright.views.regulate.Progress;
import padwright.views.regulate.RegulationRow;
import padwright.views.regulate.RegulationState;

/** The couplings in the order of work, to be ticked off with the mouse or the space bar. */
public final class RegulationList extends Composite {

	private static final String[] COLUMNS = { "pair", "found", "do", "upset", "adjuster" };
	private static final int[] WIDTHS = { 90, 90, 90, 120, 90 };

	private static final int TICK_BOX = 26;

	private final Bar bar;
	private final Label count;
	private final Table table;
	private final Label note;
	private Palette palette;
	private RegulationState state = RegulationState.empty();
	private Progress progress = Progress.none();
	private Consumer<Progress> onTick = next -> {
	};
	private Consumer<String> onSelect = key -> {
	};

	public RegulationList(Composite parent, Palette palette) {
		super(parent, SWT.NONE);
		this.palette = palette;
		bar = new Bar(this);
		count = bar.label("");
		table = new Table(this, SWT.CHECK | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
		table.setHeaderVisible(true);
		Bar.fill(table);
		Bar.name(table, Messages.of("regulate.name"));
		for (int index = 0; index < COLUMNS.length; index++) {
			TableColumn column = new TableColumn(table, SWT.LEFT);
			column.setText(Messages.of("regulate.column." + COLUMNS[index]));
			column.setWidth(WIDTHS[index]);
		}
		table.addListener(SWT.Selection, this::selected);
		note = new Label(this, SWT.WRAP);
		GridData line = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
		line.horizontalIndent = 8;
		note.setLayoutData(line);
		setPalette(palette);
	}

	/**
	 * Shows couplings.
	 *
	 * @param progress which of them are done; the caller keeps it
	 * @param selected the key whose first coupling is selected, if any; listeners are not told
	 */
	public void show(RegulationState state, Progress progress, Optional<String> selected) {
		this.state = state;
		this.progress = progress;
		int top = table.getTopIndex();
		table.removeAll();
		state.rows().forEach(this::add);
		widen();
		table.setTopIndex(top);
		note.setText(state.note());
		selected.ifPresent(this::select);
		tell();
		layout();
	}

	private void widen() {
		List<List<String>> rows = state.rows().stream().map(RegulationList::cells).toList();
		for (int index = 0; index < COLUMNS.length; index++) {
			int column = index;
			TextWidths.show(table, index, rows.stream().map(row -> row.get(column)).toList(), index == 0 ? TICK_BOX : 0);
		}
	}

	private static List<String> cells(RegulationRow row) {
		return List.of(row.pair(), row.found(), row.turn(), row.upset(), row.adjuster());
	}

	/** Told what is done whenever a coupling is ticked off or no longer is. */
	public void onTick(Consumer<Progress> listener) {
		onTick = listener;
	}

	/** Told the name of the key that drives the coupling selected. */
	public void onSelect(Consumer<String> listener) {
		onSelect = listener;
	}

	public void setPalette(Palette palette) {
		this.palette = palette;
		setBackground(Colours.of(palette.ground()));
		bar.setPalette(palette);
		note.setBackground(Colours.of(palette.ground()));
		note.setForeground(Colours.of(palette.quiet()));
		TableColours.apply(table, palette);
		for (int index = 0; index < table.getItemCount(); index++) {
			colour(table.getItem(index), state.rows().get(index));
		}
	}

	@Override
	public boolean setFocus() {
		return table.setFocus();
	}

	private void add(RegulationRow row) {
		TableItem item = new TableItem(table, SWT.NONE);
		item.setText(cells(row).toArray(String[]::new));
		item.setChecked(progress.isDone(row.id()));
		colour(item, row);
	}

	private void colour(TableItem item, RegulationRow row) {
		boolean done = progress.isDone(row.id());
		item.setForeground(Colours.of(done ? palette.quiet() : palette.ink()));
		if (!done && !row.upset().isEmpty()) {
			item.setForeground(List.of(COLUMNS).indexOf("upset"), Colours.of(palette.warning()));
		}
	}

	private void select(String key) {
		for (int index = 0; index < state.rows().size(); index++) {
			if (state.rows().get(index).driver().equals(key)) {
				table.setSelection(index);
				return;
			}
		}
	}

	private void selected(Event event) {
		RegulationRow row = state.rows().get(table.indexOf((TableItem) event.item));
		if (event.detail == SWT.CHECK) {
			TableItem item = (TableItem) event.item;
			progress = progress.with(row.id(), item.getChecked());
			colour(item, row);
			tell();
			onTick.accept(progress);
		} else {
			onSelect.accept(row.driver());
		}
	}

	private void tell() {
		long done = state.rows().stream().filter(row -> progress.isDone(row.id())).count();
		count.setText(Messages.of("regulate.count", done, state.rows().size()));
		count.getParent().layout();
	}
}
