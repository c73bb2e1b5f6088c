package padwright.workup.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

import padwright.workup.sound.NoteVenting;
import padwright.workup.sound.PadVenting;
import padwright.workup.sound.SystemSound;
import padwright.workup.words.Messages;

/** What raised pads do to the notes by hanging over their holes. */
public final class VentingReport {

	/** Rises in mm that a pad is tried at. */
	public static final List<Double> RISES = List.of(0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0);

	private VentingReport() {
	}

	/** Every pad as it is. */
	public static Report of(SystemSound system, List<PadVenting> pads) {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.key"))
				.figures(Messages.of("report.venting.rise")).words(Messages.of("report.venting.note"))
				.figures(Messages.of("report.sound.cents"), Messages.of("report.venting.decibels"),
						Messages.of("report.venting.tenth"), Messages.of("report.venting.enough"));
		pads.forEach(pad -> pad.worst().ifPresent(note -> table.ofKey(pad.key(), pad.key(),
				Figures.number(pad.rise(), 1), note.note(), signed(note.cents()), signed(note.decibels()),
				signed(note.byTenth()), pad.enough().map(enough -> Figures.number(enough, 1)).orElse(""))));
		table.note(Messages.of("report.venting.enoughMeans"));
		String assumed = pads.stream().filter(PadVenting::isAssumed).map(PadVenting::key).collect(Collectors.joining(", "));
		if (!assumed.isEmpty()) {
			table.note(Messages.of("report.sound.assumedRise", Figures.millimetres(SystemSound.USUAL_RISE, 0), assumed));
		}
		return new Report(Messages.of("report.venting.title", system.system().getName()), leads(system),
				List.of(table.table()));
	}

	/** One pad at several rises. */
	public static Report of(SystemSound system, PadVenting pad) {
		return new Report(Messages.of("report.venting.titleOfKey", pad.key(), system.system().getName()), leads(system),
				List.of(table(Messages.of("report.venting.centsByRise"), pad, NoteVenting::cents),
						table(Messages.of("report.venting.decibelsByRise"), pad, NoteVenting::decibels)));
	}

	private static List<String> leads(SystemSound system) {
		List<String> leads = new ArrayList<>(SoundReport.leads(system));
		leads.add(Messages.of("report.venting.lead"));
		return leads;
	}

	private static ReportTable table(String title, PadVenting pad, ToDoubleFunction<NoteVenting> figure) {
		List<String> heads = RISES.stream().map(rise -> Figures.number(rise, 1) + " mm").toList();
		ReportTable.Maker table = new ReportTable.Maker(title).words(Messages.of("report.sound.note"))
				.figures(heads.toArray(String[]::new));
		List<Map<String, NoteVenting>> byRise = RISES.stream().map(rise -> pad.notes(rise).stream()
				.collect(Collectors.toMap(NoteVenting::note, note -> note))).toList();
		pad.ventings().forEach(venting -> {
			List<String> cells = new ArrayList<>(List.of(venting.note().label()));
			byRise.forEach(notes -> cells.add(Optional.ofNullable(notes.get(venting.note().label()))
					.map(note -> signed(figure.applyAsDouble(note))).orElse("")));
			table.row(cells.toArray(String[]::new));
		});
		return table.table();
	}

	private static String signed(double number) {
		return SoundReport.signed(number);
	}
}
