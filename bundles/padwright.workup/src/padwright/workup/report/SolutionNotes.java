package padwright.workup.report;

import java.util.ArrayList;
import java.util.List;

import padwright.workup.calibration.KeyCalibration;
import padwright.workup.solve.HeightWork;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.SeatWords;
import padwright.workup.words.Messages;

/** What explains a solved key, in words. */
final class SolutionNotes {

	private final List<String> notes = new ArrayList<>();

	static List<String> of(KeySolution key) {
		SolutionNotes notes = new SolutionNotes();
		key.unsolved().forEach(reason -> notes.notes.add(reason.words()));
		key.level().ifPresent(answer -> notes.notes.addAll(SeatWords.of(key.job(), answer)));
		HeightWork.of(key.job()).flatMap(HeightWork::toldTolerance)
				.ifPresent(told -> notes.notes.add(Messages.of("report.solve.height", told)));
		KeyCalibration.of(key.job()).ifPresent(notes::addCalibration);
		return notes.notes;
	}

	private void addCalibration(KeyCalibration calibration) {
		calibration.stiffness().told().ifPresentOrElse(
				told -> notes.add(Messages.of(calibration.rounds() == 1 ? "report.solve.stiffness.one" : "report.solve.stiffness",
						HistoryReport.stiffness(told), calibration.rounds())),
				() -> notes.add(Messages.of("report.solve.noStiffness", calibration.stiffness().why())));
	}
}
