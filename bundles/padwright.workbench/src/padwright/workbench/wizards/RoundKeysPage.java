package padwright.workbench.wizards;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CheckboxTableViewer;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

import padwright.engine.clock.ClockHour;
import padwright.model.systems.EffectiveKey;
import padwright.workbench.Messages;
import padwright.workbench.bench.PlanOnBench;
import padwright.workbench.controls.Named;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.BlindHours;
import padwright.workup.words.Chance;

/** Which keys are felt. */
final class RoundKeysPage extends StartPage {

	private static final int LINES = 14;

	private final Optional<PlanOnBench> plan;
	private CheckboxTableViewer keys;
	private Button turn;

	RoundKeysPage(Optional<PlanOnBench> plan) {
		super("new.round");
		this.plan = plan;
	}

	private List<KeyJob> rows() {
		return plan.map(open -> open.service().jobs()).orElse(List.of());
	}

	@Override
	void fill(Form form) {
		keys = CheckboxTableViewer.newCheckList(form.area(), SWT.BORDER | SWT.V_SCROLL);
		Named.as(Messages.get("new.round.keys"), keys.getTable());
		GridDataFactory.fillDefaults().grab(true, true).span(3, 1)
				.hint(SWT.DEFAULT, keys.getTable().getItemHeight() * LINES).applyTo(keys.getTable());
		keys.setContentProvider(ArrayContentProvider.getInstance());
		keys.setLabelProvider(LabelProvider.createTextProvider(row -> words((KeyJob) row)));
		keys.setInput(rows());
		keys.setCheckedElements(DueKeys.of(rows()).toArray());
		keys.addCheckStateListener(checked -> look());
		turn = form.check("new.round.turn", isTurnAdvised());
		turn.setText(Messages.get("new.round.turn", words(turnedHours())));
		Composite buttons = form.area();
		button(buttons, "new.round.all", true);
		button(buttons, "new.round.none", false);
	}

	private List<ClockHour> planned() {
		return plan.<List<ClockHour>>map(open -> open.service().plan().getHours()).orElse(List.of());
	}

	private List<ClockHour> turnedHours() {
		return planned().isEmpty() ? List.of() : BlindHours.turned(planned());
	}

	private static String words(List<ClockHour> hours) {
		return hours.stream().map(ClockHour::toString).collect(Collectors.joining(" "));
	}

	/** Whether a saddle can hide between the hours of the plan, and a key was felt at them last. */
	private boolean isTurnAdvised() {
		return BlindHours.are(planned()) && rows().stream()
				.anyMatch(row -> row.lastRound().filter(round -> row.hours(round).equals(planned())).isPresent());
	}

	/** The hours of the readings, where they are not the plan's. */
	List<ClockHour> ownHours() {
		return turn != null && turn.getSelection() ? turnedHours() : List.of();
	}

	private void button(Composite area, String key, boolean checked) {
		Button button = new Button(area, SWT.PUSH);
		button.setText(Messages.get(key));
		button.addSelectionListener(SelectionListener.widgetSelectedAdapter(pushed -> {
			keys.setAllChecked(checked);
			look();
		}));
	}

	private static String words(KeyJob row) {
		String name = row.key().map(EffectiveKey::label).filter(label -> !label.equals(row.name()))
				.map(label -> row.name() + "  (" + label + ")").orElse(row.name());
		return DueKeys.lastChance(row).map(chance -> Messages.get("new.round.key", name, Chance.of(chance)))
				.orElse(name);
	}

	@Override
	Optional<String> fault() {
		if (plan.isEmpty()) {
			return Optional.of(Messages.get("new.round.noPlan"));
		}
		if (plan.get().service().plan().getHours().isEmpty()) {
			return Optional.of(Messages.get("new.round.noHours"));
		}
		return chosen().isEmpty() ? Optional.of(Messages.get("new.round.noKey")) : Optional.empty();
	}

	/** The rows that are felt, in the order of the plan. */
	List<KeyJob> chosen() {
		return keys == null ? List.of()
				: Arrays.stream(keys.getCheckedElements()).map(KeyJob.class::cast).toList();
	}
}
