package padwright.workup.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.workup.harm.Likely;
import padwright.workup.harm.NoteHarm;
import padwright.workup.harm.PadHarm;
import padwright.workup.harm.PlanHarm;
import padwright.workup.parts.Labels;
import padwright.workup.words.Messages;

/** What every leaking pad does to the notes, the most harmful first, and a map of notes by pads. */
public final class HarmReport {

	private static final int WORST = 3;
	/** Less than this in dB is told as nothing. */
	private static final double LEAST = 0.05;

	private final PlanHarm harm;

	private HarmReport(PlanHarm harm) {
		this.harm = harm;
	}

	/** With a map that is as wide as there are pads, for a page or a terminal. */
	public static Report of(PlanHarm harm) {
		HarmReport report = new HarmReport(harm);
		return report.with(report.map());
	}

	/** With a map whose rows are the pads, so that each leads to its key, for a window. */
	public static Report byPads(PlanHarm harm) {
		HarmReport report = new HarmReport(harm);
		return report.with(report.mapOfPads());
	}

	private Report with(ReportTable map) {
		return new Report(Messages.of("report.harm.title", harm.plan().plan().getName()),
				List.of(Messages.of("report.harm.lead", harm.plan().plan().getName()), Messages.of("report.harm.model")),
				List.of(pads(), map));
	}

	private ReportTable pads() {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.harm.pads")).figures(Messages.of("report.rank"))
				.words(Messages.of("report.key")).figures(Messages.of("report.harm.mean"))
				.words(Messages.of("report.harm.worst"));
		for (int index = 0; index < harm.pads().size(); index++) {
			PadHarm pad = harm.pads().get(index);
			table.ofKey(pad.key(), String.valueOf(index + 1), label(pad.key()), Figures.number(pad.mean(), 2), worst(pad));
		}
		harm.leftOut().forEach(key -> table.note(Messages.of("report.leftOut", label(key.key()), key.why())));
		return table.table();
	}

	private static String worst(PadHarm pad) {
		String notes = pad.worst(WORST).stream().filter(note -> note.decibels().high() >= LEAST)
				.map(HarmReport::heard).collect(Collectors.joining("; "));
		return notes.isEmpty() ? Messages.of("report.harm.unheard") : notes;
	}

	private static String heard(NoteHarm note) {
		Likely weaker = note.decibels();
		return Messages.of("report.harm.note", note.note(), Figures.number(weaker.expected(), 1),
				Figures.number(weaker.low(), 1), Figures.number(weaker.high(), 1), cents(note.cents().expected()));
	}

	private static String cents(double cents) {
		return (cents >= 0.5 ? "+" : "") + Figures.number(Math.abs(cents) < 0.5 ? 0 : cents, 0);
	}

	private ReportTable map() {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.harm.map"))
				.words(Messages.of("report.sound.note"))
				.figures(harm.pads().stream().map(pad -> label(pad.key())).toArray(String[]::new));
		harm.notes().forEach(note -> table.row(Stream
				.concat(Stream.of(note), harm.pads().stream().map(pad -> cell(pad, note)))
				.toArray(String[]::new)));
		table.note(Messages.of("report.harm.mapMeans", Figures.number(LEAST, 2)));
		return table.table();
	}

	private ReportTable mapOfPads() {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.harm.map")).words(Messages.of("report.key"))
				.figures(harm.notes().toArray(String[]::new));
		harm.pads().forEach(pad -> table.ofKey(pad.key(), Stream
				.concat(Stream.of(label(pad.key())), harm.notes().stream().map(note -> cell(pad, note)))
				.toArray(String[]::new)));
		table.note(Messages.of("report.harm.mapMeans", Figures.number(LEAST, 2)));
		return table.table();
	}

	private static String cell(PadHarm pad, String note) {
		return pad.in(note).map(NoteHarm::decibels).map(Likely::expected)
				.map(decibels -> decibels < LEAST ? "·" : Figures.number(decibels, 1)).orElse("");
	}

	private String label(String key) {
		return Labels.ofKey(harm.plan(), key);
	}
}
