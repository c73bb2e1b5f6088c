package padwright.workbench.inspector;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;

import padwright.drawing.scene.Ink;
import padwright.engine.clock.ClockHour;
import padwright.views.Palette;
import padwright.views.canvas.HourClock;
import padwright.workbench.Messages;
import padwright.workbench.controls.Named;
import padwright.workbench.inspector.FormLine.Listed;

/** One line of a form: its name, its controls, and the unit of its values. */
final class LineControl {

	/** Wide enough for a reading. */
	private static final int CELL = 44;
	private static final int GAP = 2;

	private final Composite form;
	private final FormListener listener;
	private final Palette palette;
	private final List<Optional<FieldControl>> cells = new ArrayList<>();
	private final Label unit;
	private Optional<HourClock> clock = Optional.empty();
	private FormLine line;

	LineControl(Composite form, FormLine line, FormListener listener, Palette palette) {
		this.form = form;
		this.line = line;
		this.listener = listener;
		this.palette = palette;
		new Label(form, SWT.NONE).setText(line.label());
		if (line.isSingle()) {
			single();
		} else {
			several();
		}
		unit = new Label(form, SWT.NONE);
		show();
	}

	private void single() {
		FormCell cell = line.cells().get(0).orElseThrow();
		if (!cell.isHours()) {
			cells.add(Optional.of(new FieldControl(form, cell, false, listener::changed)));
			return;
		}
		Composite both = new Composite(form, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, GAP).applyTo(both);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(both);
		cells.add(Optional.of(new FieldControl(both, cell, false, listener::changed)));
		HourClock picked = new HourClock(both, palette, Messages.get("inspector.clock", cell.name()), cell.isSeveral(),
				this::picked);
		GridDataFactory.swtDefaults().indent(FieldControl.DECORATION, 0).applyTo(picked);
		clock = Optional.of(picked);
		form.getDisplay().asyncExec(() -> onGroundOf(picked));
	}

	/** The theme gives a form its ground after it is made. */
	private void onGroundOf(HourClock picked) {
		if (!picked.isDisposed()) {
			var ground = form.getBackground();
			picked.setPalette(palette.on(new Ink(ground.getRed(), ground.getGreen(), ground.getBlue())));
		}
	}

	private void picked(List<ClockHour> hours) {
		listener.changed(line.cells().get(0).orElseThrow(),
				hours.stream().map(ClockHour::toString).collect(Collectors.joining(" ")));
	}

	private void several() {
		Composite row = new Composite(form, SWT.NONE);
		boolean isGrid = line.listed().isEmpty();
		int buttons = isGrid ? 0 : 3;
		GridLayoutFactory.fillDefaults().numColumns(Math.max(line.headings().size(), line.cells().size()) + buttons)
				.spacing(GAP, 0).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		for (String heading : line.headings()) {
			Label label = new Label(row, SWT.CENTER);
			label.setText(heading);
			GridDataFactory.fillDefaults().hint(CELL, SWT.DEFAULT).indent(FieldControl.DECORATION, 0).applyTo(label);
		}
		for (Optional<FormCell> cell : line.cells()) {
			cells.add(cell.map(shown -> cell(row, shown, isGrid)));
			if (cell.isEmpty()) {
				GridDataFactory.fillDefaults().hint(CELL, SWT.DEFAULT).indent(FieldControl.DECORATION, 0)
						.applyTo(new Label(row, SWT.NONE));
			}
		}
		line.listed().ifPresent(listed -> buttons(row, listed));
	}

	private FieldControl cell(Composite row, FormCell shown, boolean isGrid) {
		FieldControl control = new FieldControl(row, shown, true, listener::changed);
		if (isGrid) {
			control.narrow(CELL);
		}
		return control;
	}

	private void buttons(Composite row, Listed listed) {
		button(row, "inspector.up", "\u2191", now -> listener.edited(now.rows(), now.rows().swap(now.row() - 1)))
				.setEnabled(listed.row() > 0);
		button(row, "inspector.again", "+", now -> listener.edited(now.rows(), now.rows().again(now.row())));
		button(row, "inspector.takeOut", "\u2212", now -> listener.edited(now.rows(), now.rows().remove(now.row())))
				.setEnabled(listener.canRemove(listed.rows()));
	}

	private Button button(Composite row, String word, String sign, Consumer<Listed> action) {
		String name = Messages.get(word, line.label().strip());
		Button button = Named.as(name, new Button(row, SWT.PUSH));
		button.setText(sign);
		button.setToolTipText(name);
		button.addListener(SWT.Selection, (Event pressed) -> line.listed().ifPresent(action));
		return button;
	}

	/** Shows the same line as it was read anew. */
	void refresh(FormLine anew) {
		line = anew;
		for (int index = 0; index < cells.size(); index++) {
			FormCell cell = anew.cells().get(index).orElse(null);
			cells.get(index).ifPresent(control -> control.refresh(cell));
		}
		show();
	}

	private void show() {
		unit.setText(line.unit());
		unit.requestLayout();
		clock.ifPresent(picked -> picked.show(hours(line.cells().get(0).orElseThrow())));
	}

	private static List<ClockHour> hours(FormCell cell) {
		Object said = cell.field().element().eClass().getEAllStructuralFeatures().contains(cell.field().feature())
				? cell.field().element().eGet(cell.field().feature()) : null;
		return said instanceof List<?> several ? several.stream().map(ClockHour.class::cast).toList()
				: said instanceof ClockHour one ? List.of(one) : List.of();
	}

	/** What is wrong with what is typed, for tests. */
	Stream<String> faults() {
		return cells.stream().flatMap(Optional::stream).flatMap(cell -> cell.faultShown().stream());
	}
}
