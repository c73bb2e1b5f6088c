package padwright.commands;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.seating.SeatAnswer;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PadGap;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.SeatWords;
import padwright.workup.words.Chance;
import padwright.workup.words.GapWords;

/** A solved plan for people, key by key, in thou. */
final class SolutionTable {

	private SolutionTable() {
	}

	static void print(PrintWriter out, PlanSolution solution) {
		out.println(solution.plan().plan().getName() + ": seat within " + solution.plan().tolerance()
				+ ", lengths in thou, pieces by the clock. A model: the feeler decides.");
		out.println("Level: the chance that the gap is nowhere wider than the seat, as felt and after what is to do. Gap "
				+ "after: 9 in 10 such rims lie in it at the widest hour.");
		out.println();
		TextTable table = new TextTable("key", "full shims", "sum", "error", "level", "after", "gap after",
				"to do");
		solution.keys().forEach(key -> table.row(row(key)));
		table.print(out);
		out.println();
		solution.keys().forEach(key -> SolutionNotes.of(key)
				.forEach(note -> out.println(KeyLabels.of(key.job()) + ": " + note)));
	}

	private static String[] row(KeySolution key) {
		return new String[] { KeyLabels.of(key.job()), key.height().map(SolutionTable::stack).orElse("-"),
				key.height().map(answer -> Amounts.thou(answer.solution().sum())).orElse(""),
				key.height().map(answer -> Amounts.signedThou(answer.work().shownError(answer.solution().sum()))).orElse(""),
				key.level().map(answer -> now(answer.seat())).orElse("-"),
				key.level().map(answer -> after(answer.seat())).orElse(""),
				key.level().map(answer -> gap(answer.seat())).orElse(""),
				key.level().map(SolutionTable::toDo).orElse("") };
	}

	private static String stack(HeightAnswer answer) {
		List<Length> pieces = answer.solution().pieces();
		return pieces.isEmpty() ? "none" : pieces.stream().map(Amounts::thou).collect(Collectors.joining(" + "));
	}

	private static String now(SeatAnswer seat) {
		return seat.heldOff() ? "held off" : Chance.of(seat.chanceNow());
	}

	private static String after(SeatAnswer seat) {
		return seat.nothing() ? "" : Chance.of(seat.chance());
	}

	private static String gap(SeatAnswer seat) {
		return seat.nothing() ? "" : GapWords.range(seat.gapAfter(), PadGap.widest(seat.gapAfter()));
	}

	private static String toDo(LevelAnswer answer) {
		return answer.seat().heldOff() ? "regulate first" : SeatWords.toDo(answer.seat());
	}
}
