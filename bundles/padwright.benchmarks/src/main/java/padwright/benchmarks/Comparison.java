package padwright.benchmarks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.engine.length.Length;
import padwright.engine.levelling.Levelling;
import padwright.engine.levelling.LevellingProblem;
import padwright.engine.levelling.LevellingSolution;

/**
 * The levelling against general solvers on the same pads in the same run, one thread each: least spread with at most so
 * many pieces, so with no tolerance. A solver that does not end in time is entered with the time limit, which is kind
 * to it; what it has found and proved by then is still held against our answer.
 */
final class Comparison {

	private final List<GeneralSolver> rivals = List.of(new ConstraintSolver(), new IntegerSolver());
	private final Duration limit;
	private final List<Double> ours = new ArrayList<>();
	private final Map<GeneralSolver, List<Double>> theirs = new LinkedHashMap<>();

	Comparison(Duration limit) {
		this.limit = limit;
		rivals.forEach(rival -> theirs.put(rival, new ArrayList<>()));
	}

	/** Prints a line for each number of pieces; gives the median time of the better rival divided by ours. */
	double run(int[] films, int padsPerCount) {
		System.out.printf("Least spread with at most so many pieces, %d thicknesses; median ms (solved of %d)%n",
				films.length, padsPerCount);
		System.out.printf("%-7s%14s%26s%26s%n", "pieces", "ours", rivals.get(0).name(), rivals.get(1).name());
		for (int pieces = 1; pieces <= LevellingProblem.MOST_PIECES; pieces++) {
			compare(pieces, films, padsPerCount);
		}
		double best = theirs.values().stream().mapToDouble(Timing::median).min().getAsDouble();
		return best / Timing.median(ours);
	}

	private void compare(int pieces, int[] films, int count) {
		Pads seeded = new Pads(100 + pieces);
		List<LevellingProblem> pads = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			pads.add(seeded.next(films, Length.ZERO, pieces));
		}
		List<Double> own = new ArrayList<>();
		for (LevellingProblem pad : pads) {
			Levelling.solve(pad);
			own.add(Timing.of(() -> Levelling.solve(pad)).milliseconds());
		}
		StringBuilder line = new StringBuilder(String.format("%-7d%14.3f", pieces, Timing.median(own)));
		ours.addAll(own);
		for (GeneralSolver rival : rivals) {
			line.append(solveAll(rival, pads));
		}
		System.out.println(line);
	}

	private String solveAll(GeneralSolver rival, List<LevellingProblem> pads) {
		List<Double> times = new ArrayList<>();
		int solved = 0;
		for (LevellingProblem pad : pads) {
			Timing.Timed<GeneralSolver.Answer> timed = Timing.of(() -> rival.leastSpread(pad, limit));
			requireAgreement(rival, pad, timed.result());
			solved += timed.result().proved() ? 1 : 0;
			times.add(timed.result().proved() ? timed.milliseconds() : limit.toMillis());
		}
		theirs.get(rival).addAll(times);
		boolean late = solved <= pads.size() / 2;
		return String.format("%26s", String.format("%s%.0f (%d)", late ? ">= " : "", Timing.median(times), solved));
	}

	/** A general solver may stop at a relative gap or round; ours is exact, so it may only be better, and by little. */
	private static void requireAgreement(GeneralSolver rival, LevellingProblem pad, GeneralSolver.Answer answer) {
		LevellingSolution solution = Levelling.solve(pad);
		long spread = solution.spreadAfter().nanometres();
		boolean found = answer.spread() >= spread - 1;
		boolean bounded = answer.bound() <= spread + 1;
		if (!found || !bounded || !solution.proof().optimal()) {
			throw new IllegalStateException(rival.name() + " found " + answer + ", not " + spread + " nm: " + pad);
		}
	}
}
