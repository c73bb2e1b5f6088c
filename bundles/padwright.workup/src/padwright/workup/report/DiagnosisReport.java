package padwright.workup.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.engine.diagnosis.Diagnosis;
import padwright.engine.diagnosis.NextNote;
import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.diagnosis.SuspectSet;
import padwright.engine.diagnosis.UnexplainedNote;
import padwright.workup.diagnosis.PlanDiagnosis;
import padwright.workup.parts.Labels;
import padwright.workup.words.Messages;

/** Which pads notes make suspect, the likeliest first. */
public final class DiagnosisReport {

	private static final int MOST_ROWS = 15;

	private final PlanDiagnosis found;
	private final Diagnosis diagnosis;

	private DiagnosisReport(PlanDiagnosis found) {
		this.found = found;
		this.diagnosis = found.diagnosis();
	}

	public static Report of(PlanDiagnosis found) {
		DiagnosisReport report = new DiagnosisReport(found);
		return new Report(Messages.of("report.diagnosis.title", found.plan().plan().getName()),
				List.of(report.lead(), Messages.of(found.heard() ? "report.diagnosis.heard" : "report.diagnosis.logical")),
				List.of(report.table()));
	}

	private String lead() {
		String plan = found.plan().plan().getName();
		String bad = names(diagnosis.notes().bad());
		return diagnosis.notes().good().isEmpty() ? Messages.of("report.diagnosis.bad", plan, bad)
				: Messages.of("report.diagnosis.badAndGood", plan, bad, names(diagnosis.notes().good()));
	}

	private ReportTable table() {
		List<SuspectSet> suspects = diagnosis.suspects();
		ReportTable.Maker table = new ReportTable.Maker(
				suspects.isEmpty() ? "" : Messages.of("report.diagnosis.suspects"))
				.words(Messages.of("report.diagnosis.pads")).figures(Messages.of("report.share"));
		suspects.stream().limit(MOST_ROWS).forEach(set -> table.ofKey(set.pads().iterator().next(), labels(set.pads()),
				Figures.percent(set.share())));
		if (suspects.size() > MOST_ROWS) {
			table.note(Messages.of("report.diagnosis.more", suspects.size() - MOST_ROWS));
		}
		if (!suspects.isEmpty() && diagnosis.moreMayExist()) {
			table.note(Messages.of("report.diagnosis.together"));
		}
		diagnosis.contradictions().forEach(contradiction -> table.note(explain(contradiction)));
		if (!suspects.isEmpty()) {
			table.note(found.next().map(this::next).orElseGet(this::noNext));
		}
		return table.table();
	}

	/** Pads that the same notes clear are told together. */
	private String explain(UnexplainedNote contradiction) {
		if (found.heard()) {
			return Messages.of("report.diagnosis.unexplained", contradiction.note());
		}
		Map<List<String>, List<String>> padsByNotes = new LinkedHashMap<>();
		contradiction.clearedBy().forEach((pad, notes) -> padsByNotes
				.computeIfAbsent(notes, cleared -> new ArrayList<>()).add(pad));
		return Messages.of("report.diagnosis.contradiction", contradiction.note(), padsByNotes.entrySet().stream()
				.map(cleared -> Messages.of("report.diagnosis.clearedBy", labels(cleared.getValue()),
						String.join(Messages.of("report.diagnosis.and"), cleared.getKey())))
				.collect(Collectors.joining("; ")));
	}

	private String next(NextNote next) {
		String note = next.note().note();
		String chance = Figures.percent(next.chanceBad());
		return diagnosis.notes().has(note) ? Messages.of("report.diagnosis.again", note, chance)
				: Messages.of("report.diagnosis.try", note, chance);
	}

	private String noNext() {
		return diagnosis.suspects().size() == 1
				? Messages.of("report.diagnosis.only", labels(diagnosis.suspects().get(0).pads()))
				: Messages.of("report.diagnosis.feel");
	}

	private String labels(Collection<String> pads) {
		return pads.stream().map(pad -> Labels.ofKey(found.plan(), pad)).collect(Collectors.joining(" + "));
	}

	private static String names(List<NoteFingering> notes) {
		return notes.stream().map(NoteFingering::note).collect(Collectors.joining(", "));
	}
}
