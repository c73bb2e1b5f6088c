package padwright.commands;

import java.io.PrintWriter;
import java.util.Locale;

import padwright.engine.coupling.Adjuster;
import padwright.engine.coupling.Adjustment;
import padwright.engine.coupling.Bumper;
import padwright.engine.coupling.FilmChange;
import padwright.engine.coupling.Regulation;
import padwright.engine.coupling.Screw;
import padwright.engine.coupling.ScrewTurn;
import padwright.workup.regulate.AdjustmentWords;
import padwright.workup.regulate.RegulationStep;
import padwright.workup.regulate.RegulationWork;
import padwright.workup.words.LengthWords;

/** The regulation of a plan for people, in thou. */
final class RegulationTable {

	private final RegulationWork work;
	private final PrintWriter out;

	private RegulationTable(RegulationWork work, PrintWriter out) {
		this.work = work;
		this.out = out;
	}

	static void print(PrintWriter out, RegulationWork work) {
		new RegulationTable(work, out).print();
	}

	private void print() {
		out.println(work.plan().plan().getName() + ": couplings in the order of work, lengths in thou, travel and "
				+ "turns positive toward the driven key.");
		out.println();
		printSteps();
		out.println();
		if (work.upsets().isEmpty()) {
			out.println("Pieces and stacks of the plan upset no coupling.");
		} else {
			printChanges();
			out.println();
			printUpsets();
		}
	}

	private void printSteps() {
		TextTable table = new TextTable("pair", "adjuster", "found", "travel", "turns", "do");
		for (RegulationStep step : work.steps()) {
			table.row(label(step.coupling().driver()) + " > " + label(step.coupling().driven()),
					adjuster(step.coupling().adjuster()), step.found().map(RegulationTable::found).orElse("-"),
					step.found().map(found -> Amounts.signedThou(found.travel())).orElse(""),
					step.found().map(found -> turns(found.adjustment())).orElse(""),
					step.found().map(found -> words(found.adjustment())).orElse("feel both pads"));
		}
		table.print(out);
	}

	private void printChanges() {
		out.println("Keys that meet their rims sooner (+) or later by what the plan does in their cups, as a way of the middle of the cup:");
		TextTable table = new TextTable("key", "by stack", "by film", "in all");
		work.changes().forEach(change -> table.row(label(change.key()), Amounts.signedThou(change.byStack(), 1),
				Amounts.signedThou(change.byFilm(), 1), Amounts.signedThou(change.total(), 1)));
		table.print(out);
	}

	private void printUpsets() {
		out.println("Light to expect then, if all was regulated before. A model: the feeler decides.");
		TextTable table = new TextTable("press", "light at", "thou");
		work.upsets().forEach(upset -> table.row(label(upset.driver()), label(upset.lightAt()),
				LengthWords.rough(upset.light())));
		table.print(out);
	}

	private String label(String key) {
		return KeyLabels.of(work.plan(), key);
	}

	private static String adjuster(Adjuster adjuster) {
		if (adjuster instanceof Screw screw) {
			return "screw, pitch " + Amounts.millimetres(screw.pitch(), 3) + " mm";
		}
		return adjuster instanceof Bumper bumper ? bumper.material().name().toLowerCase(Locale.ROOT) : "";
	}

	private static String found(Regulation found) {
		return Amounts.thou(found.light()) + " light at " + found.side().name().toLowerCase(Locale.ROOT);
	}

	private static String turns(Adjustment adjustment) {
		return adjustment instanceof ScrewTurn turn ? (turn.turns().signum() > 0 ? "+" : "")
				+ turn.turns().stripTrailingZeros().toPlainString() : "";
	}

	private static String words(Adjustment adjustment) {
		boolean isLeft = adjustment instanceof FilmChange film && film.remainder().signum() != 0;
		return AdjustmentWords.of(adjustment)
				+ (isLeft ? "; " + Amounts.signedThou(((FilmChange) adjustment).remainder()) + " stays" : "");
	}
}
