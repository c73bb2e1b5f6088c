package padwright.workbench.wizards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.language.edit.ReadingEdits;
import padwright.language.edit.TextEdit;
import padwright.views.clock.TypedReading;
import padwright.workbench.Messages;
import padwright.workbench.bench.PlanOnBench;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;

/** What the feeler says at each hour of the chosen keys. */
final class RoundGridPage extends StartPage {

	private static final int HEIGHT = 320;

	private final Optional<PlanOnBench> plan;
	private List<KeyJob> rows = List.of();
	private List<ClockHour> ownHours = List.of();
	private Composite area;
	private ReadingGrid grid;

	RoundGridPage(Optional<PlanOnBench> plan) {
		super("new.round.readings");
		this.plan = plan;
	}

	@Override
	void fill(Form form) {
		area = form.area();
		GridDataFactory.fillDefaults().hint(SWT.DEFAULT, HEIGHT).applyTo(area);
	}

	/**
	 * Shows the rows of these keys; what was typed stays where they are the same.
	 *
	 * @param own hours of the readings; none for those of the plan
	 */
	void show(List<KeyJob> chosen, List<ClockHour> own) {
		if (grid != null && chosen.equals(rows) && own.equals(ownHours)) {
			return;
		}
		if (grid != null) {
			grid.control().dispose();
		}
		rows = chosen;
		ownHours = own;
		grid = new ReadingGrid(area, rows.stream().map(KeyJob::name).toList(),
				own.isEmpty() ? plan.orElseThrow().service().plan().getHours() : own, this::typed);
		GridDataFactory.fillDefaults().grab(true, true).span(3, 1).applyTo(grid.control());
		area.layout();
		look();
	}

	private void typed() {
		look();
		setErrorMessage(fault().filter(fault -> !isBlank()).orElse(null));
	}

	@Override
	public void setVisible(boolean visible) {
		super.setVisible(visible);
		if (visible) {
			grid.focusFirst();
		}
	}

	private boolean isBlank() {
		return typedRows().isEmpty();
	}

	/** The numbers of the rows in which something was typed. */
	private List<Integer> typedRows() {
		List<Integer> typed = new ArrayList<>();
		for (int row = 0; grid != null && row < rows.size(); row++) {
			if (grid.row(row).stream().anyMatch(text -> !text.isEmpty())) {
				typed.add(row);
			}
		}
		return typed;
	}

	@Override
	Optional<String> fault() {
		if (isBlank()) {
			return Optional.of(Messages.get("new.round.nothingTyped"));
		}
		return typedRows().stream().filter(row -> ReadingGrid.readings(grid.row(row), leaves()).isEmpty()).findFirst()
				.map(row -> Messages.get("new.round.fault", rows.get(row).name()));
	}

	private List<Length> leaves() {
		return plan.orElseThrow().service().feelers();
	}

	/** The edits that note what was typed; rows in which nothing was typed get no round. */
	List<TextEdit> edits() {
		List<TextEdit> edits = new ArrayList<>();
		for (int row : typedRows()) {
			List<LeafReading> readings = ReadingGrid.readings(grid.row(row), leaves()).orElseThrow().stream()
					.map(TypedReading::reading).toList();
			edits.addAll(ReadingEdits.another(rows.get(row).service(), ownHours, readings));
		}
		return edits;
	}

	ReadingGrid grid() {
		return grid;
	}
}
