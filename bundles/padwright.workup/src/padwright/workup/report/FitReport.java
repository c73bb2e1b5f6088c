package padwright.workup.report;

import java.util.ArrayList;
import java.util.List;

import padwright.workup.sound.OctaveSound;
import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.SystemSound;
import padwright.workup.sound.ToneSound;
import padwright.workup.words.Messages;

/** What changes of sizes do to the scale of a system: every note and every octave before and after. */
public final class FitReport {

	private final ScaleSound before;
	private final ScaleSound after;

	private FitReport(ScaleSound before, ScaleSound after) {
		this.before = before;
		this.after = after;
	}

	/** @param after of the same system with other sizes: the same notes in the same order */
	public static Report of(SystemSound system, ScaleSound before, ScaleSound after) {
		FitReport report = new FitReport(before, after);
		List<String> leads = new ArrayList<>(SoundReport.leads(system));
		leads.add(caution());
		return new Report(Messages.of("report.fit.title", system.system().getName()), leads,
				List.of(report.notes(), report.octaves()));
	}

	/** What a fit is for. */
	public static String caution() {
		return Messages.of("report.fit.caution");
	}

	/** What is said where nothing is to change. */
	public static String nothing() {
		return Messages.of("report.fit.nothing");
	}

	private ReportTable notes() {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.sound.note"))
				.figures(Messages.of("report.sound.octave"), Messages.of("report.fit.before"),
						Messages.of("report.fit.after"));
		List<ToneSound> then = after.scale();
		for (int index = 0; index < then.size(); index++) {
			ToneSound now = before.scale().get(index);
			table.row(now.tone().name(), String.valueOf(now.octave()), cents(now), cents(then.get(index)));
		}
		return table.table();
	}

	private ReportTable octaves() {
		ReportTable.Maker table = new ReportTable.Maker("").figures(Messages.of("report.sound.octave"))
				.words(Messages.of("report.fit.worst"), Messages.of("report.fit.after"));
		for (int index = 0; index < before.octaves().size(); index++) {
			OctaveSound was = before.octaves().get(index);
			table.row(String.valueOf(was.octave()), worst(was), worst(after.octaves().get(index)));
		}
		return table.table();
	}

	private static String worst(OctaveSound octave) {
		return octave.worst().tone().name() + " " + cents(octave.worst());
	}

	private static String cents(ToneSound note) {
		return note.sound().cents().map(cents -> (cents < 0 ? "" : "+") + Figures.number(cents, 1)).orElse("");
	}
}
