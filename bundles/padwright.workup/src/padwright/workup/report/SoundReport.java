package padwright.workup.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.engine.acoustics.Measure;
import padwright.engine.acoustics.Resonance;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.sound.HoleEffect;
import padwright.workup.sound.OctaveSound;
import padwright.workup.sound.ScaleSound;
import padwright.workup.sound.SystemSound;
import padwright.workup.sound.ToneSound;
import padwright.workup.words.Messages;
import padwright.workup.words.Terms;

/** How the notes of a system sound, how even they are, and what the sizes of its holes do to them. */
public final class SoundReport {

	/** Cents that no ear hears and no bench can meet. */
	private static final double LEAST_CENTS = 0.1;

	private final SystemSound system;
	private final ScaleSound scale;

	private SoundReport(SystemSound system) {
		this.system = system;
		scale = ScaleSound.of(system);
	}

	/**
	 * @param holes whether what the holes do is told, too
	 * @throws java.util.NoSuchElementException if the system has no air column
	 */
	public static Report of(SystemSound system, boolean holes) {
		SoundReport report = new SoundReport(system);
		List<ReportTable> tables = new ArrayList<>(List.of(report.notes(), report.octaves()));
		if (holes) {
			tables.add(report.holes());
		}
		return new Report(Messages.of("report.sound.title", system.system().getName()), leads(system), tables);
	}

	/** What is to be known before any figure is read. */
	public static List<String> leads(SystemSound system) {
		EffectiveSystem effective = system.mechanism().system();
		List<String> leads = new ArrayList<>();
		leads.add(Messages.of("report.sound.standard", system.system().getName(), Figures.plain(effective.pitch()),
				Figures.plain(effective.temperature())));
		leads.add(Messages.of("report.sound.model"));
		if (!system.hasMouth()) {
			leads.add(Messages.of("report.sound.noMouth"));
		}
		return leads;
	}

	private ReportTable notes() {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.sound.note"),
				Messages.of("report.sound.purpose")).figures(Messages.of("report.sound.should"),
						Messages.of("report.sound.sounds"), Messages.of("report.sound.cents"),
						Messages.of("report.sound.strength"));
		scale.notes().forEach(note -> table.row(note.tone().name(), purpose(note),
				Figures.number(note.tone().note().hertz(), 2),
				note.sound().played().map(Resonance::hertz).map(hertz -> Figures.number(hertz, 2))
						.orElse(Messages.of("report.sound.silent")),
				note.sound().cents().map(SoundReport::signed).orElse(""),
				note.sound().strength().map(SoundReport::signed).orElse("")));
		if (!system.assumedRises().isEmpty()) {
			table.note(Messages.of("report.sound.assumedRise",
					Figures.millimetres(SystemSound.USUAL_RISE, 0), String.join(", ", system.assumedRises())));
		}
		if (!system.undercut().isEmpty()) {
			table.note(Messages.of("report.sound.undercut", String.join(", ", system.undercut())));
		}
		system.leftOut().forEach(note -> table.note(Messages.of("report.leftOut", note.name(), note.why())));
		return table.table();
	}

	private static String purpose(ToneSound note) {
		return Terms.of(note.tone().fingering().fingering().getPurpose());
	}

	private ReportTable octaves() {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.sound.evenness")).figures(
				Messages.of("report.sound.octave"), Messages.of("report.sound.notes"), Messages.of("report.sound.mean"),
				Messages.of("report.sound.spread"), Messages.of("report.sound.step"))
				.words(Messages.of("report.sound.worst"));
		scale.octaves().forEach(octave -> table.row(String.valueOf(octave.octave()),
				String.valueOf(octave.notes().size()), signed(octave.mean()), Figures.number(octave.spread(), 1),
				Figures.number(octave.step(), 1), worst(octave)));
		table.note(Messages.of("report.sound.evennessMeans"));
		return table.table();
	}

	private static String worst(OctaveSound octave) {
		return octave.worst().tone().name() + " " + signed(octave.worst().sound().cents().orElseThrow());
	}

	private ReportTable holes() {
		ReportTable.Maker table = new ReportTable.Maker(Messages.of("report.sound.holes"))
				.words(Messages.of("report.sound.hole"), Messages.of("report.sound.change"),
						Messages.of("report.sound.effect"));
		scale.holeEffects(system.instrument().orElseThrow())
				.forEach(effect -> table.row(effect.hole(), change(effect.measure()), notes(effect)));
		table.note(Messages.of("report.sound.holesMeans", Figures.number(LEAST_CENTS, 1)));
		return table.table();
	}

	private static String change(Measure measure) {
		return switch (measure) {
		case PLACE -> Messages.of("report.sound.lower");
		case DIAMETER -> Messages.of("report.sound.wider");
		default -> Messages.of("report.sound.deeper");
		};
	}

	private static String notes(HoleEffect effect) {
		return effect.cents().entrySet().stream().filter(note -> Math.abs(note.getValue()) >= LEAST_CENTS)
				.map(SoundReport::cents).collect(Collectors.joining(", "));
	}

	private static String cents(Map.Entry<String, Double> note) {
		return note.getKey() + " " + signed(note.getValue());
	}

	static String signed(double number) {
		String text = Figures.number(number, 1);
		return Math.abs(number) < 0.05 ? Figures.number(0, 1) : number > 0 ? "+" + text : text;
	}
}
