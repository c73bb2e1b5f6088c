package padwright.workup.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

import padwright.engine.length.Length;
import padwright.engine.mechanism.HoleState;
import padwright.engine.mechanism.MechanismState;
import padwright.engine.mechanism.TouchFeel;
import padwright.model.Resolved;
import padwright.model.keysystem.Press;
import padwright.model.keysystem.Touch;
import padwright.workup.mechanism.ClashPhrase;
import padwright.workup.mechanism.SystemFingering;
import padwright.workup.mechanism.SystemMechanism;
import padwright.workup.words.Messages;
import padwright.workup.words.Terms;

/** What the fingerings of a system do, and what each of its touches does alone. */
public final class NotesReport {

	private static final String NONE = "-";
	private static final int DECIMALS = 2;

	private final SystemMechanism mechanism;

	private NotesReport(SystemMechanism mechanism) {
		this.mechanism = mechanism;
	}

	/** @param system its name */
	public static Report of(String system, SystemMechanism mechanism) {
		NotesReport report = new NotesReport(mechanism);
		return new Report(Messages.of("report.notes.title", system),
				List.of(Messages.of("report.notes.lead", mechanism.system().pads().size(), mechanism.holes().size(),
						mechanism.fingerings().size())),
				List.of(report.notes(), report.touches()));
	}

	private ReportTable notes() {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.sound.note"),
				Messages.of("report.notes.purpose"), Messages.of("report.notes.touches"), Messages.of("report.notes.moves"),
				Messages.of("report.notes.open"), Messages.of("report.notes.remark"));
		for (SystemFingering fingering : mechanism.fingerings()) {
			MechanismState state = mechanism.state(fingering);
			table.row(fingering.name(), Terms.of(fingering.fingering().getPurpose()),
					list(fingering.fingering().getPresses().stream().map(NotesReport::press).toList()),
					names(mechanism.moved(state)), list(open(state)), list(remarks(fingering, state), "; "));
		}
		return table.table();
	}

	private static String press(Press press) {
		String touch = Resolved.of(press.getTouch()).map(Touch::getName).map(NotesReport::word).orElse("?");
		return press.isHalf() ? Messages.of("report.notes.half", touch) : touch;
	}

	private static List<String> open(MechanismState state) {
		return state.sounding().stream().map(hole -> state.holes().get(hole) == HoleState.HALF
				? Messages.of("report.notes.half", word(hole)) : word(hole)).toList();
	}

	private static List<String> remarks(SystemFingering fingering, MechanismState state) {
		List<String> remarks = new ArrayList<>();
		fingering.missing().forEach(touch -> remarks.add(Messages.of("report.notes.noTouch", touch)));
		state.contradictions().forEach(clash -> remarks.add(Messages.of("report.notes.cannotBe", ClashPhrase.of(clash))));
		state.held().forEach(clash -> remarks.add(Messages.of("report.notes.held", ClashPhrase.of(clash))));
		return remarks;
	}

	private ReportTable touches() {
		ReportTable.Maker table = new ReportTable.Maker("").words(Messages.of("report.notes.touch"),
				Messages.of("report.notes.after")).figures(Messages.of("report.notes.grams"))
				.words(Messages.of("report.notes.unweighed"));
		mechanism.mechanism().touches().forEach(touch -> {
			TouchFeel feel = mechanism.feel(touch.name());
			table.row(touch.name(), list(feel.lostMotion().entrySet().stream().map(NotesReport::moved).toList()),
					feel.force().signum() == 0 ? NONE : Figures.plain(feel.force().stripTrailingZeros()),
					names(feel.unweighed()));
		});
		return table.table();
	}

	private static String moved(Map.Entry<String, Length> key) {
		Length lost = key.getValue();
		return lost.signum() == 0 ? word(key.getKey()) : word(key.getKey()) + " (" + Figures.millimetres(lost, DECIMALS) + " mm)";
	}

	/** A name with blanks stands in quotation marks, as it is written in the system. */
	private static String word(String name) {
		return name.contains(" ") ? '"' + name + '"' : name;
	}

	private static String names(Collection<String> names) {
		return list(names.stream().map(NotesReport::word).toList());
	}

	private static String list(Collection<String> words) {
		return list(words, " ");
	}

	private static String list(Collection<String> words, String between) {
		return words.isEmpty() ? NONE : String.join(between, words);
	}
}
