package padwright.benchmarks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;

import padwright.engine.clock.ClockHour;
import padwright.engine.film.FilmSupply;
import padwright.engine.levelling.LevellingProblem;

/**
 * OR-Tools CP-SAT: how often each candidate is used, every residual between a lowest and a highest gap, and the
 * difference of these two as small as can be.
 */
public final class ConstraintSolver implements GeneralSolver {

	static {
		Loader.loadNativeLibraries();
	}

	@Override
	public String name() {
		return "OR-Tools CP-SAT";
	}

	@Override
	public Answer leastSpread(LevellingProblem problem, Duration limit) {
		CpModel model = new CpModel();
		model.minimize(addSpread(model, problem, problem.gap().spread().nanometres()));
		CpSolver solver = solver(limit);
		CpSolverStatus status = solver.solve(model);
		return new Answer(isFound(status) ? Math.round(solver.objectiveValue()) : Long.MAX_VALUE,
				Math.round(solver.bestObjectiveBound()), status == CpSolverStatus.OPTIMAL);
	}

	/** Whether any choice has a spread of at most {@code most} nm; empty if the time does not suffice to tell. */
	public Optional<Boolean> canReach(LevellingProblem problem, long most, Duration limit) {
		CpModel model = new CpModel();
		addSpread(model, problem, most);
		CpSolverStatus status = solver(limit).solve(model);
		return isFound(status) ? Optional.of(true)
				: Optional.of(false).filter(none -> status == CpSolverStatus.INFEASIBLE);
	}

	private static boolean isFound(CpSolverStatus status) {
		return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
	}

	private static CpSolver solver(Duration limit) {
		CpSolver solver = new CpSolver();
		solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxTimeInSeconds(limit.toMillis() / 1e3);
		return solver;
	}

	/** Adds the problem and gives the variable of its spread. */
	private static IntVar addSpread(CpModel model, LevellingProblem problem, long most) {
		List<IntVar> counts = new ArrayList<>();
		List<long[]> lifts = new ArrayList<>();
		for (FilmSupply film : problem.films()) {
			addFilm(model, problem, film, counts, lifts);
		}
		IntVar[] used = counts.toArray(IntVar[]::new);
		model.addLessOrEqual(LinearExpr.sum(used), problem.maxPieces());
		long reach = reach(problem, lifts);
		IntVar low = model.newIntVar(-reach, reach, "low");
		IntVar spread = model.newIntVar(0, most, "spread");
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			LinearExpr residual = residual(problem, station, used, lifts);
			model.addGreaterOrEqual(residual, low);
			model.addLessOrEqual(residual, LinearExpr.sum(new IntVar[] {low, spread}));
		}
		return spread;
	}

	private static void addFilm(CpModel model, LevellingProblem problem, FilmSupply film, List<IntVar> counts,
			List<long[]> lifts) {
		int most = CandidateLifts.most(film, problem);
		List<long[]> ofFilm = CandidateLifts.of(film, problem);
		IntVar[] used = Stream.generate(() -> model.newIntVar(0, most, "")).limit(ofFilm.size())
				.toArray(IntVar[]::new);
		if (most < problem.maxPieces()) {
			model.addLessOrEqual(LinearExpr.sum(used), most);
		}
		counts.addAll(Arrays.asList(used));
		lifts.addAll(ofFilm);
	}

	private static LinearExpr residual(LevellingProblem problem, int station, IntVar[] used, List<long[]> lifts) {
		long[] lowering = lifts.stream().mapToLong(lift -> -lift[station]).toArray();
		return LinearExpr.newBuilder().addWeightedSum(used, lowering).add(problem.gap().nanometresAt(station)).build();
	}

	private static long reach(LevellingProblem problem, List<long[]> lifts) {
		long gap = problem.gap().stream().map(Math::abs).max().getAsLong();
		long lift = lifts.stream().flatMapToLong(Arrays::stream).map(Math::abs).max().orElse(0);
		return gap + problem.maxPieces() * lift;
	}
}
