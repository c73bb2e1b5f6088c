package padwright.commands;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.levelling.LevellingSolution;
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
		TextTable table = new TextTable("key", "full shims", "sum", "error", "spread", "after", "proof",
				"partial shims");
		solution.keys().forEach(key -> table.row(row(key)));
		table.print(out);
		out.println();
		solution.keys().forEach(key -> SolutionNotes.of(key)
				.forEach(note -> out.println(KeyLabels.of(key.job()) + ": " + note)));
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
