package padwright.workup.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import padwright.engine.coupling.Adjuster;
import padwright.engine.coupling.Adjustment;
import padwright.engine.coupling.Bumper;
import padwright.engine.coupling.FilmChange;
import padwright.engine.coupling.Regulation;
import padwright.engine.coupling.Screw;
import padwright.engine.coupling.ScrewTurn;
import padwright.workup.parts.Labels;
import padwright.workup.regulate.AdjustmentWords;
import padwright.workup.regulate.RegulationStep;
import padwright.workup.regulate.RegulationWork;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;
import padwright.workup.words.ShownUnit;

/** How to regulate the linked keys of a plan, in the order of work, and what its pieces and shims will upset. */
public final class RegulationReport {

	/** A hundredth of a turn is about as fine as a hand can set a screw. */
	private static final int TURN_DECIMALS = 2;

	private final RegulationWork work;

	private RegulationReport(RegulationWork work) {
		this.work = work;
	}

	public static Report of(RegulationWork work) {
		return new RegulationReport(work).report();
	}

	private Report report() {
		String plan = work.plan().plan().getName();
		List<ReportTable> tables = new ArrayList<>(List.of(steps()));
		if (work.upsets().isEmpty()) {
			tables.add(nothingUpset());
		} else {
			tables.add(changes());
			tables.add(upsets());
		}
		return new Report(Messages.of("report.regulate.title", plan),
				List.of(Messages.of("report.regulate.lead", plan, ShownUnit.symbol())), tables);
	}

	private ReportTable steps() {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.regulate.pair"),
				Messages.of("report.regulate.adjuster"), Messages.of("report.regulate.found"))
				.figures(Messages.of("report.regulate.travel"), Messages.of("report.regulate.turns"))
				.words(Messages.of("report.regulate.do"));
		work.steps().forEach(step -> row(step, table));
		return table.table();
	}

	private void row(RegulationStep step, ReportTable.Maker table) {
		table.ofKey(step.coupling().driver(), label(step.coupling().driver()) + " > " + label(step.coupling().driven()),
				adjuster(step.coupling().adjuster()), step.found().map(RegulationReport::found).orElse("-"),
				step.found().map(found -> LengthWords.signed(found.travel())).orElse(""),
				step.found().map(found -> turns(found.adjustment())).orElse(""),
				step.found().map(found -> words(found.adjustment())).orElse(Messages.of("report.regulate.feel")));
	}

	private static ReportTable nothingUpset() {
		ReportTable.Maker table = new ReportTable.Maker("").words("");
		table.note(Messages.of("report.regulate.upsetsNone"));
		return table.table();
	}

	private ReportTable changes() {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.regulate.changes"))
				.words(Messages.of("report.key")).figures(Messages.of("report.regulate.byStack"),
						Messages.of("report.regulate.byFilm"), Messages.of("report.regulate.inAll"));
		work.changes().forEach(change -> table.ofKey(change.key(), label(change.key()),
				LengthWords.roughSigned(change.byStack()), LengthWords.roughSigned(change.byFilm()),
				LengthWords.roughSigned(change.total())));
		return table.table();
	}

	private ReportTable upsets() {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.regulate.upsets"))
				.words(Messages.of("report.regulate.press"), Messages.of("report.regulate.lightAt"))
				.figures(ShownUnit.symbol());
		work.upsets().forEach(upset -> table.ofKey(upset.driver(), label(upset.driver()), label(upset.lightAt()),
				LengthWords.rough(upset.light())));
		return table.table();
	}

	private String label(String key) {
		return Labels.ofKey(work.plan(), key);
	}

	private static String adjuster(Adjuster adjuster) {
		if (adjuster instanceof Screw screw) {
			return Messages.of("report.regulate.screw", Figures.millimetres(screw.pitch(), 3));
		}
		return adjuster instanceof Bumper bumper
				? Messages.of("report.regulate." + bumper.material().name().toLowerCase(Locale.ROOT)) : "";
	}

	private static String found(Regulation found) {
		return Messages.of(found.side() == Regulation.Side.DRIVER ? "report.regulate.lightAtDriver"
				: "report.regulate.lightAtDriven", LengthWords.figure(found.light()));
	}

	private static String turns(Adjustment adjustment) {
		return adjustment instanceof ScrewTurn turn ? Figures.signed(turn.turns(), TURN_DECIMALS) : "";
	}

	private static String words(Adjustment adjustment) {
		return adjustment instanceof FilmChange film && film.remainder().signum() != 0
				? Messages.of("report.regulate.stays", AdjustmentWords.of(film), LengthWords.signed(film.remainder()))
				: AdjustmentWords.of(adjustment);
	}
}
