package padwright.commands;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.levelling.LevellingSolution;
import padwright.engine.rim.Contradiction;
import padwright.engine.rim.ProfileSplit;
import padwright.engine.rim.ProfileWords;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlanSolution;

/** A solved plan for people, key by key, in thou. */
final class SolutionTable {

	private SolutionTable() {
	}

	static void print(PrintWriter out, PlanSolution solution) {
		out.println(solution.plan().plan().getName() + ": seat within " + solution.plan().tolerance()
				+ ", lengths in thou, pieces by the clock. A model: the feeler decides.");
		out.println();
		TextTable table = new TextTable("key", "full shims", "sum", "error", "spread", "after", "proof", "partial shims");
		solution.keys().forEach(key -> table.row(row(key)));
		table.print(out);
		out.println();
		solution.keys().forEach(key -> notes(key).forEach(note -> out.println(KeyLabels.of(key.job()) + ": " + note)));
	}

	private static String[] row(KeySolution key) {
		return new String[] { KeyLabels.of(key.job()), key.height().map(SolutionTable::stack).orElse("-"),
				key.height().map(answer -> Amounts.thou(answer.solution().sum())).orElse(""),
				key.height().map(answer -> Amounts.signedThou(answer.solution().error())).orElse(""),
				key.level().map(answer -> Amounts.thou(answer.solution().spreadBefore())).orElse("-"),
				key.level().map(answer -> Amounts.thou(answer.solution().spreadAfter())).orElse(""),
				key.level().map(answer -> proof(answer.solution())).orElse(""),
				key.level().map(SolutionTable::pieces).orElse("") };
	}

	private static List<String> notes(KeySolution key) {
		List<String> notes = new ArrayList<>(key.unsolved());
		key.level().ifPresent(answer -> {
			answer.rim().contradictions().forEach(contradiction -> notes.add(contradiction(contradiction)));
			if (answer.solution().spreadBefore().isLongerThan(key.job().plan().tolerance())) {
				notes.add(ProfileWords.of(ProfileSplit.of(answer.rim().profile())));
			}
			if (answer.solution().excess().signum() > 0) {
				notes.add("film alone leaves " + Amounts.thou(answer.solution().excess()) + " more than the seat allows: true "
						+ "the cup or the key first; never file the rim");
			}
			if (answer.assumedStiffness()) {
				notes.add("the stock gives no stiffness for this pad; " + answer.problem().stiffness().lambda()
						+ " was assumed");
			}
		});
		return notes;
	}

	private static String contradiction(Contradiction contradiction) {
		return "the reading at " + contradiction.reading().hour() + " is " + Amounts.thou(contradiction.by())
				+ " off what the others allow: feel it again";
	}

	private static String stack(HeightAnswer answer) {
		List<Length> pieces = answer.solution().pieces();
		return pieces.isEmpty() ? "none" : pieces.stream().map(Amounts::thou).collect(Collectors.joining(" + "));
	}

	private static String pieces(LevelAnswer answer) {
		return answer.solution().pieces().isEmpty() ? "none" : answer.solution().pieces().stream()
				.map(Object::toString).collect(Collectors.joining(", "));
	}

	private static String proof(LevellingSolution solution) {
		return solution.proof().optimal() ? "optimal" : ">= " + Amounts.thou(solution.proof().bound());
	}
}
