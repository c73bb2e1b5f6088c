package padwright.commands;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationResult.Undecided;
import padwright.engine.rim.Contradiction;
import padwright.engine.rim.ProfileSplit;
import padwright.workup.calibration.KeyCalibration;
import padwright.workup.report.HistoryReport;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.WorstReading;
import padwright.workup.words.ProfileWords;

/** What explains a solved key, in words. */
final class SolutionNotes {

	private final KeySolution key;
	private final List<String> notes = new ArrayList<>();

	private SolutionNotes(KeySolution key) {
		this.key = key;
	}

	static List<String> of(KeySolution key) {
		SolutionNotes notes = new SolutionNotes(key);
		notes.notes.addAll(key.unsolved());
		key.level().ifPresent(notes::addLevel);
		KeyCalibration.of(key.job()).ifPresent(notes::addCalibration);
		return notes.notes;
	}

	private void addLevel(LevelAnswer answer) {
		answer.rim().contradictions().forEach(contradiction -> notes.add(contradiction(contradiction)));
		if (answer.solution().spreadBefore().signum() > 0) {
			addSplit(ProfileSplit.of(answer.rim().profile()));
		}
		if (answer.assumedStiffness()) {
			notes.add("the stock gives no stiffness for this pad; " + answer.problem().stiffness().lambda()
					+ " was assumed");
		}
	}

	private void addSplit(ProfileSplit split) {
		notes.add(ProfileWords.of(split));
		notes.add(ProfileWords.ofCure(split));
		WorstReading.of(key).filter(worst -> worst.gap().signum() > 0).ifPresent(
				worst -> notes.add("worst after: " + Amounts.thou(worst.gap()) + " thou at " + worst.hour()));
	}

	private void addCalibration(KeyCalibration calibration) {
		if (calibration.result() instanceof Calibrated told) {
			notes.add("stiffness by " + calibration.rounds() + (calibration.rounds() == 1 ? " round: " : " rounds: ")
					+ HistoryReport.stiffness(told));
		} else if (calibration.result() instanceof Undecided undecided) {
			notes.add("no stiffness from its rounds: " + undecided.why());
		}
	}

	private static String contradiction(Contradiction contradiction) {
		return "the reading at " + contradiction.reading().hour() + " is " + Amounts.thou(contradiction.by())
				+ " off what the others allow: feel it again";
	}
}
