package padwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;

import padwright.engine.film.FilmSupply;
import padwright.engine.height.HeightSolution;
import padwright.engine.height.HeightSolver;
import padwright.engine.length.Length;

/** Height from limited stock against OR-Tools CP-SAT, one thread: least error, then fewest pieces. */
final class HeightComparison {

	private static final int HALF_THOU = 12_700;
	private static final int MOST_BLANKS = 4;
	/** More than the pieces of any stack here, so that a nanometre of error outweighs them. */
	private static final long ERROR_WEIGHT = 1_000;

	static {
		Loader.loadNativeLibraries();
	}

	private record Stack(Length target, List<FilmSupply> stock) {
	}

	private HeightComparison() {
	}

	static void print(int stacks) {
		SplittableRandom random = new SplittableRandom(21);
		List<Double> ours = new ArrayList<>();
		List<Double> theirs = new ArrayList<>();
		for (int i = 0; i < stacks; i++) {
			Stack stack = next(random);
			HeightSolver.solve(stack.target(), stack.stock());
			Timing.Timed<HeightSolution> own = Timing.of(() -> HeightSolver.solve(stack.target(), stack.stock()));
			Timing.Timed<Long> outside = Timing.of(() -> leastCost(stack));
			long cost = Math.abs(own.result().error().nanometres()) * ERROR_WEIGHT + own.result().pieces().size();
			if (cost != outside.result()) {
				throw new IllegalStateException("not " + outside.result() + " but " + own.result() + ": " + stack);
			}
			ours.add(own.milliseconds());
			theirs.add(outside.milliseconds());
		}
		System.out.printf("Height from limited stock, %d stacks: median ms ours %.3f, OR-Tools CP-SAT %.3f%n%n", stacks,
				Timing.median(ours), Timing.median(theirs));
	}

	/** 5 to 30 thou in steps of a tenth of a micrometre, from eight thicknesses with up to four blanks of each. */
	private static Stack next(SplittableRandom random) {
		List<FilmSupply> stock = new ArrayList<>();
		for (int half : Pads.USUAL) {
			stock.add(new FilmSupply(new Length((long) half * HALF_THOU), random.nextInt(MOST_BLANKS + 1)));
		}
		return new Stack(new Length(random.nextInt(1_270, 7_620) * 100L), stock);
	}

	private static long leastCost(Stack stack) {
		CpModel model = new CpModel();
		IntVar[] counts = stack.stock().stream().map(film -> model.newIntVar(0, film.pieces(), ""))
				.toArray(IntVar[]::new);
		long[] thicknesses = stack.stock().stream().mapToLong(film -> film.thickness().nanometres()).toArray();
		long target = stack.target().nanometres();
		IntVar error = model.newIntVar(0, target, "error");
		LinearExpr over = LinearExpr.newBuilder().addWeightedSum(counts, thicknesses).add(-target).build();
		model.addLessOrEqual(over, error);
		model.addGreaterOrEqual(LinearExpr.newBuilder().add(over).add(error).build(), 0);
		model.minimize(LinearExpr.newBuilder().addSum(counts).addTerm(error, ERROR_WEIGHT).build());
		CpSolver solver = new CpSolver();
		solver.getParameters().setNumWorkers(1);
		if (solver.solve(model) != CpSolverStatus.OPTIMAL) {
			throw new IllegalStateException("no proof for " + stack);
		}
		return Math.round(solver.objectiveValue());
	}
}
