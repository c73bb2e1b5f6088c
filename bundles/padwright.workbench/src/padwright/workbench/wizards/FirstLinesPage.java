package padwright.workbench.wizards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;

import padwright.language.start.FirstLines;
import padwright.model.plan.Saliva;
import padwright.model.plan.Tone;
import padwright.model.stock.StockPackage;
import padwright.workbench.Messages;
import padwright.workbench.prefs.Preferences;

/** What holds for all keys of a new plan: what is fitted, the hours that are read, the bed, and who plays. */
final class FirstLinesPage extends StartPage {

	private final NewPlanPage plan;
	private Text hours;
	private Text bed;
	private Text player;
	private Combo tone;
	private Combo saliva;
	private Combo pad;
	private Combo disc;
	private Combo film;
	private Combo glue;

	/** @param plan what was said of the plan before */
	FirstLinesPage(NewPlanPage plan) {
		super("new.plan.first");
		this.plan = plan;
	}

	@Override
	void fill(Form form) {
		pad = form.choice("new.plan.pad", List.of());
		disc = form.choice("new.plan.disc", List.of());
		film = form.choice("new.plan.film", List.of());
		glue = form.choice("new.plan.glue", List.of());
		hours = form.text("new.plan.hours", FirstLines.USUAL_HOURS);
		bed = form.text("new.plan.bed", "");
		player = form.text("new.plan.player", "");
		tone = form.choice("new.plan.tone", words(Tone.values()));
		saliva = form.choice("new.plan.saliva", words(Saliva.values()));
	}

	private static List<String> words(Enum<?>[] values) {
		List<String> words = new ArrayList<>(List.of(""));
		Stream.of(values).map(value -> value.toString().toLowerCase(Locale.ROOT)).forEach(words::add);
		return words;
	}

	@Override
	public void setVisible(boolean visible) {
		if (visible) {
			offer(pad, StockPackage.Literals.PAD);
			offer(disc, StockPackage.Literals.BACKING);
			offer(film, StockPackage.Literals.FILM_SET);
			offer(glue, StockPackage.Literals.ADHESIVE);
		}
		super.setVisible(visible);
	}

	private void offer(Combo combo, EClass kind) {
		String before = combo.getText();
		List<String> items = new ArrayList<>(List.of(""));
		items.addAll(plan.index().articles(plan.stock(), kind));
		combo.setItems(items.toArray(String[]::new));
		combo.select(Math.max(0, items.indexOf(before)));
	}

	@Override
	Optional<String> fault() {
		return said().fault().map(wrong -> Messages.get(
				wrong == FirstLines.Fault.BED ? "new.plan.bed.fault" : "new.plan.hours.fault"));
	}

	/** What is said so far; as it is at first where the page was not looked at. */
	FirstLines said() {
		return new FirstLines(Preferences.tolerance(), bed.getText().replace(" ", ""), player.getText().strip(),
				tone.getText(), saliva.getText(), pad.getText(), disc.getText(), film.getText(), glue.getText(),
				hours.getText().strip());
	}
}
