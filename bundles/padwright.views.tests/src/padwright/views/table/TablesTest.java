package padwright.views.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;

import padwright.views.Bench;
import padwright.views.Palette;
import padwright.views.canvas.OnDisplay;
import padwright.views.regulate.Progress;
import padwright.views.regulate.RegulationState;
import padwright.views.rows.KeyColumn;
import padwright.views.rows.KeyRows;

/** Needs a display. */
class TablesTest {

	private static final String ROWS = "key B stack 7.5 5 felt . 1 . 1\nkey A empty 15 felt . 0.5 . .";

	private static <T extends Control> T child(Composite parent, Class<T> kind) {
		return Arrays.stream(parent.getChildren()).filter(kind::isInstance).map(kind::cast).reduce((one, last) -> last)
				.orElseThrow();
	}

	private static KeyTable table(Shell shell, Bench bench, Optional<String> selected) {
		KeyTable table = new KeyTable(shell, Palette.light());
		table.show(KeyRows.of(bench.plan(), bench.findings()), selected);
		OnDisplay.open(shell);
		return table;
	}

	@Test
	void aHeadingSortsAndSortsTheOtherWayAgain() {
		OnDisplay.run(shell -> {
			Table rows = child(table(shell, new Bench(ROWS), Optional.of("A")), Table.class);
			rows.getColumn(KeyColumn.CUP.ordinal()).notifyListeners(SWT.Selection, new Event());
			assertEquals("trill", rows.getItem(0).getText(0));
			rows.getColumn(KeyColumn.CUP.ordinal()).notifyListeners(SWT.Selection, new Event());
			assertEquals("trill", rows.getItem(2).getText(0));
			assertEquals("A", rows.getSelection()[0].getText(0));
		});
	}

	@Test
	void cellsAreTypedIntoOneBelowTheOther() {
		Bench bench = new Bench(ROWS);
		OnDisplay.run(shell -> {
			KeyTable table = table(shell, bench, Optional.of("B"));
			table.onEdit(edits -> {
				bench.apply(edits);
				table.show(KeyRows.of(bench.plan(), bench.findings()), Optional.empty());
				return true;
			});
			Table rows = child(table, Table.class);
			OnDisplay.press(rows, SWT.F2, '\0', 0);
			enter(child(rows, Text.class), ". . . 0.5");
			enter(child(rows, Text.class), "1 . . .");
		});
		assertEquals("key B stack 7.5 5 felt . . . 0.5\nkey A empty 15 felt 1 . . .", bench.rows());
	}

	private static void enter(Text field, String text) {
		field.setText(text);
		Event event = new Event();
		event.detail = SWT.TRAVERSE_RETURN;
		event.doit = true;
		field.notifyListeners(SWT.Traverse, event);
	}

	/** Else the next figures would fall into the text of the plan. */
	@Test
	void aDoubleClickEditsAndNeverLeavesTheTable() {
		Bench bench = new Bench(ROWS);
		List<String> jumps = new ArrayList<>();
		OnDisplay.run(shell -> {
			KeyTable table = table(shell, bench, Optional.of("B"));
			table.onJump(jumps::add);
			table.onEdit(bench::apply);
			Table rows = child(table, Table.class);
			rows.notifyListeners(SWT.DefaultSelection, new Event());
			for (KeyColumn column : new KeyColumn[] { KeyColumn.READINGS, KeyColumn.KEY, KeyColumn.STATE }) {
				doubleClick(rows, column);
				assertEquals(". 1 . 1", child(rows, Text.class).getText());
				assertTrue(child(rows, Text.class).isFocusControl());
			}
			assertEquals(List.of(), jumps);
			OnDisplay.press(rows, SWT.F3, '\0', 0);
			assertEquals(List.of("B"), jumps);
		});
	}

	private static void doubleClick(Table rows, KeyColumn column) {
		Event event = new Event();
		event.x = rows.getItem(0).getBounds(column.ordinal()).x + 2;
		event.y = rows.getItem(0).getBounds(column.ordinal()).y + 2;
		rows.notifyListeners(SWT.MouseDoubleClick, event);
	}

	@Test
	void figuresAreTypedIntoTheChosenRowAtOnce() {
		Bench bench = new Bench(ROWS);
		OnDisplay.run(shell -> {
			KeyTable table = table(shell, bench, Optional.of("B"));
			table.onEdit(bench::apply);
			Table rows = child(table, Table.class);
			OnDisplay.press(rows, '2', '2', 0);
			enter(child(rows, Text.class), child(rows, Text.class).getText() + " . . .");
		});
		assertEquals("key B stack 7.5 5 felt 2 . . .\nkey A empty 15 felt . 0.5 . .", bench.rows());
	}

	@Test
	void oneStrokeAReadingAndTheLastOneGoesOn() {
		Bench bench = new Bench(ROWS);
		List<String> chosen = new ArrayList<>();
		OnDisplay.run(shell -> {
			KeyTable table = table(shell, bench, Optional.of("B"));
			table.onEdit(bench::apply);
			table.onSelect(chosen::add);
			Table rows = child(table, Table.class);
			OnDisplay.press(rows, '5', '5', 0);
			for (char stroke : ".1".toCharArray()) {
				OnDisplay.press(child(rows, Text.class), stroke, stroke, 0);
			}
			assertEquals("0.5 . 1", child(rows, Text.class).getText());
			OnDisplay.press(child(rows, Text.class), '.', '.', 0);
			OnDisplay.press(rows, '*', '*', 0);
			table.show(KeyRows.of(bench.plan(), bench.findings()), Optional.empty());
		});
		assertEquals("key B stack 7.5 5 felt 0.5 . 1 .\nkey A empty 15 felt . . . .", bench.rows());
		assertEquals(List.of("A"), chosen.subList(0, 1));
	}

	@Test
	void aCellThatCannotBeWrittenStaysOpen() {
		Bench bench = new Bench(ROWS);
		OnDisplay.run(shell -> {
			KeyTable table = table(shell, bench, Optional.of("B"));
			table.onEdit(bench::apply);
			Table rows = child(table, Table.class);
			OnDisplay.press(rows, SWT.F2, '\0', SWT.MOD2);
			enter(child(rows, Text.class), "thick");
			assertEquals("thick", child(rows, Text.class).getText());
		});
		assertEquals(ROWS, bench.rows());
	}

	@Test
	void couplingsAreTickedOff() {
		Bench bench = new Bench(ROWS);
		List<Progress> ticked = new ArrayList<>();
		OnDisplay.run(shell -> {
			RegulationList list = new RegulationList(shell, Palette.dark());
			list.onTick(ticked::add);
			list.show(RegulationState.of(Bench.solve(bench.plan())), Progress.none(), Optional.of("A"));
			OnDisplay.open(shell);
			Table rows = child(list, Table.class);
			rows.getItem(0).setChecked(true);
			Event event = new Event();
			event.item = rows.getItem(0);
			event.detail = SWT.CHECK;
			rows.notifyListeners(SWT.Selection, event);
		});
		assertEquals(List.of(Progress.of("A > B")), ticked);
	}
}
