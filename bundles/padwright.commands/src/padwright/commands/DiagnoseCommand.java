package padwright.commands;

import java.util.List;

import padwright.workup.diagnosis.PlanDiagnosis;
import padwright.workup.report.DiagnosisReport;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Finds the pads that notes make suspect. */
@Command(name = "diagnose", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:the reports contradict each other, the plan has errors, or its keys close each "
				+ "other in a circle", "2:the plan or a note cannot be used at all" },
		description = "Finds the pads that may leak from notes that speak badly and notes that speak well, and the "
				+ "note to try next. A note is written D4, F#4, Fs4 or Bb4; D4 means its first fingering, D4/2 its "
				+ "second, D4/side the one that is labelled side. A note that was played again may be named again. "
				+ "Pads with open readings are suspected more.")
final class DiagnoseCommand extends PlanReport {

	@Option(names = "--bad", paramLabel = "NOTES", split = ",", required = true,
			description = "Notes that do not speak as they should, as in D4,E4.")
	private List<String> bad;

	@Option(names = "--good", paramLabel = "NOTES", split = ",",
			description = "Notes that do; every pad they close is taken to seal.")
	private List<String> good = List.of();

	@Override
	int report(ServicePlan plan) {
		if (written(bad).isEmpty()) {
			throw new InputException("--bad names no note");
		}
		try {
			PlanDiagnosis found = PlanDiagnosis.of(plan, written(bad), written(good));
			print(DiagnosisJson.of(found), out -> TextTable.print(out, DiagnosisReport.of(found)));
			return found.diagnosis().contradictions().isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
		} catch (IllegalArgumentException unusable) {
			throw new InputException(unusable.getMessage());
		}
	}

	private static List<String> written(List<String> notes) {
		return notes.stream().filter(note -> !note.isBlank()).toList();
	}
}
