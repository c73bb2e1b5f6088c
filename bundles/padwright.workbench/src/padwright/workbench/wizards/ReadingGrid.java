package padwright.workbench.wizards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.views.clock.TypedReading;
import padwright.workbench.Messages;
import padwright.workbench.controls.Named;

/**
 * Readings of several keys, one row a key and one column an hour. Enter goes to the next cell, so that an indicator that
 * types figures and Enter fills the grid alone; the arrows go up and down.
 */
final class ReadingGrid {

	private static final int CELL_WIDTH = 48;

	private final ScrolledComposite scrolled;
	private final List<Text> cells = new ArrayList<>();
	private final int columns;
	private final Runnable onChange;

	ReadingGrid(Composite parent, List<String> keys, List<ClockHour> hours, Runnable onChange) {
		this.columns = hours.size();
		this.onChange = onChange;
		scrolled = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
		Composite area = new Composite(scrolled, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(columns + 1).spacing(4, 4).applyTo(area);
		new Label(area, SWT.NONE);
		hours.forEach(hour -> label(area, hour.toString(), SWT.CENTER));
		for (String key : keys) {
			label(area, key, SWT.LEAD);
			hours.forEach(hour -> cells.add(cell(area, key, hour)));
		}
		scrolled.setContent(area);
		scrolled.setMinSize(area.computeSize(SWT.DEFAULT, SWT.DEFAULT));
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
	}

	ScrolledComposite control() {
		return scrolled;
	}

	private static void label(Composite area, String text, int alignment) {
		Label label = new Label(area, alignment);
		label.setText(text);
		GridDataFactory.swtDefaults().align(alignment == SWT.CENTER ? SWT.CENTER : SWT.BEGINNING, SWT.CENTER)
				.applyTo(label);
	}

	private Text cell(Composite area, String key, ClockHour hour) {
		Text cell = Named.as(Messages.get("new.round.cell", key, hour), new Text(area, SWT.BORDER | SWT.RIGHT));
		GridDataFactory.swtDefaults().hint(CELL_WIDTH, SWT.DEFAULT).applyTo(cell);
		int index = cells.size();
		cell.addModifyListener(typed -> onChange.run());
		cell.addTraverseListener(pressed -> {
			if (pressed.detail == SWT.TRAVERSE_RETURN) {
				pressed.doit = false;
				focus(index + 1);
			}
		});
		cell.addListener(SWT.KeyDown, pressed -> {
			if (pressed.keyCode == SWT.ARROW_DOWN || pressed.keyCode == SWT.ARROW_UP) {
				pressed.doit = false;
				focus(index + (pressed.keyCode == SWT.ARROW_DOWN ? columns : -columns));
			}
		});
		cell.addFocusListener(FocusListener.focusGainedAdapter(gained -> {
			cell.selectAll();
			scrolled.showControl(cell);
		}));
		return cell;
	}

	private void focus(int index) {
		if (index >= 0 && index < cells.size()) {
			cells.get(index).setFocus();
		}
	}

	void focusFirst() {
		focus(0);
	}

	/** What was typed in a row, hour by hour. */
	List<String> row(int row) {
		return cells.subList(row * columns, (row + 1) * columns).stream().map(cell -> cell.getText().strip()).toList();
	}

	/** The readings of what was typed; nothing where one is no reading, is beyond the feelers, or is missing. */
	static Optional<List<TypedReading>> readings(List<String> typed, List<Length> leaves) {
		List<TypedReading> readings = typed.stream().flatMap(text -> TypedReading.of(text, leaves).stream())
				.filter(reading -> !reading.isBeyond()).toList();
		return readings.size() == typed.size() ? Optional.of(readings) : Optional.empty();
	}
}
