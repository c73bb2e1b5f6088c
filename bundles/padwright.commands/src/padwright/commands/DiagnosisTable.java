package padwright.commands;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.engine.diagnosis.Contradiction;
import padwright.engine.diagnosis.Diagnosis;
import padwright.engine.diagnosis.NextNote;
import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.diagnosis.SuspectSet;
import padwright.workup.diagnosis.PlanDiagnosis;

/** A diagnosis for people, the likeliest suspects first. */
final class DiagnosisTable {

	private static final int MOST_ROWS = 15;

	private final PlanDiagnosis found;
	private final Diagnosis diagnosis;
	private final PrintWriter out;

	private DiagnosisTable(PlanDiagnosis found, PrintWriter out) {
		this.found = found;
		this.diagnosis = found.diagnosis();
		this.out = out;
	}

	static void print(PrintWriter out, PlanDiagnosis found) {
		new DiagnosisTable(found, out).print();
	}

	private void print() {
		out.println(found.plan().plan().getName() + ": bad " + names(diagnosis.notes().bad())
				+ (diagnosis.notes().good().isEmpty() ? "" : "; good " + names(diagnosis.notes().good())));
		out.println();
		if (!diagnosis.suspects().isEmpty()) {
			printSuspects();
			out.println();
		}
		diagnosis.contradictions().forEach(contradiction -> out.println(explain(contradiction)));
		if (!diagnosis.suspects().isEmpty()) {
			out.println(found.next().map(this::next).orElseGet(this::noNext));
		}
	}

	private void printSuspects() {
		List<SuspectSet> suspects = diagnosis.suspects();
		out.println("Each row by itself explains what is bad:");
		TextTable table = new TextTable("pads", "share");
		suspects.stream().limit(MOST_ROWS).forEach(set -> table.row(labels(set.pads()), Amounts.percent(set.share())));
		table.print(out);
		if (suspects.size() > MOST_ROWS) {
			out.println("and " + (suspects.size() - MOST_ROWS) + " less likely ones; --json lists them");
		}
		if (diagnosis.moreMayExist()) {
			out.println("More pads at once may explain it, too; they were not looked for.");
		}
	}

	/** Pads that the same notes clear are told together. */
	private String explain(Contradiction contradiction) {
		Map<List<String>, List<String>> padsByNotes = new LinkedHashMap<>();
		contradiction.clearedBy().forEach((pad, notes) -> padsByNotes
				.computeIfAbsent(notes, cleared -> new ArrayList<>()).add(pad));
		return contradiction.note() + " is bad, but good notes clear all that it closes: " + padsByNotes.entrySet()
				.stream().map(cleared -> labels(cleared.getValue()) + " by " + String.join(" and ", cleared.getKey()))
				.collect(Collectors.joining("; ")) + ". One report is wrong, or the fault is no leaking pad.";
	}

	private String next(NextNote next) {
		return "Try " + next.note().note() + " next: it tells most between these, and is bad with a chance of "
				+ Amounts.percent(next.chanceBad()) + ".";
	}

	private String noNext() {
		return diagnosis.suspects().size() == 1 ? "Nothing else explains it: look at " + labels(
				diagnosis.suspects().get(0).pads()) + "." : "No other note tells these apart: feel their pads.";
	}

	private String labels(Collection<String> pads) {
		return pads.stream().map(pad -> KeyLabels.of(found.plan(), pad)).collect(Collectors.joining(" + "));
	}

	private static String names(List<NoteFingering> notes) {
		return notes.stream().map(NoteFingering::note).collect(Collectors.joining(", "));
	}
}
