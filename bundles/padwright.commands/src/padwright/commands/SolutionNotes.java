package padwright.commands;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationResult.Undecided;
import padwright.workup.calibration.KeyCalibration;
import padwright.workup.report.HistoryReport;
import padwright.workup.solve.HeightWork;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.SeatWords;

/** What explains a solved key, in words. */
final class SolutionNotes {

	private final List<String> notes = new ArrayList<>();

	static List<String> of(KeySolution key) {
		SolutionNotes notes = new SolutionNotes();
		notes.notes.addAll(key.unsolved());
		key.level().ifPresent(answer -> notes.notes.addAll(SeatWords.of(key.job(), answer)));
		HeightWork.of(key.job()).flatMap(HeightWork::toleranceWords)
				.ifPresent(words -> notes.notes.add("height: pad and disc may be off by " + words));
		KeyCalibration.of(key.job()).ifPresent(notes::addCalibration);
		return notes.notes;
	}

	private void addCalibration(KeyCalibration calibration) {
		if (calibration.result() instanceof Calibrated told) {
			notes.add("stiffness by " + calibration.rounds() + (calibration.rounds() == 1 ? " round: " : " rounds: ")
					+ HistoryReport.stiffness(told));
		} else if (calibration.result() instanceof Undecided undecided) {
			notes.add("no stiffness from its rounds: " + undecided.why());
		}
	}
}
