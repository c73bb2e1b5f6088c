package padwright.benchmarks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.type.context.NumberContext;

import padwright.engine.clock.ClockHour;
import padwright.engine.film.FilmSupply;
import padwright.engine.levelling.LevellingProblem;

/** ojAlgo's integer programmes: the same form as for {@link ConstraintSolver}, in micrometres to suit its tolerances. */
public final class IntegerSolver implements GeneralSolver {

	private static final double NANOMETRES = 1e-3;
	private static final NumberContext EXACT = NumberContext.of(12);

	@Override
	public String name() {
		return "ojAlgo";
	}

	@Override
	public Answer leastSpread(LevellingProblem problem, Duration limit) {
		ExpressionsBasedModel model = new ExpressionsBasedModel();
		model.options.integer(IntegerStrategy.DEFAULT.withParallelism(() -> 1).withGapTolerance(EXACT));
		model.options.time_suffice = limit.toMillis();
		model.options.time_abort = limit.toMillis();
		Variable low = model.newVariable("low");
		Variable high = model.newVariable("high").weight(1);
		low.weight(-1);
		model.addExpression("spread").set(high, 1).set(low, -1).lower(0);
		List<Expression> above = new ArrayList<>();
		List<Expression> below = new ArrayList<>();
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			double gap = problem.gap().nanometresAt(station) * NANOMETRES;
			above.add(model.addExpression("above" + station).set(low, 1).upper(gap));
			below.add(model.addExpression("below" + station).set(high, 1).lower(gap));
		}
		Expression pieces = model.addExpression("pieces").upper(problem.maxPieces());
		for (FilmSupply film : problem.films()) {
			addFilm(model, problem, film, pieces, above, below);
		}
		Optimisation.Result result = model.minimise();
		boolean found = result.getState().isFeasible();
		long spread = found ? Math.round(result.getValue() / NANOMETRES) : Long.MAX_VALUE;
		boolean proved = result.getState().isOptimal();
		return new Answer(spread, proved ? spread : 0, proved);
	}

	private static void addFilm(ExpressionsBasedModel model, LevellingProblem problem, FilmSupply film,
			Expression pieces, List<Expression> above, List<Expression> below) {
		int most = CandidateLifts.most(film, problem);
		Expression blanks = model.addExpression("blanks" + film.thickness()).upper(most);
		for (long[] lift : CandidateLifts.of(film, problem)) {
			Variable used = model.newVariable("").integer(true).lower(0).upper(most);
			pieces.set(used, 1);
			blanks.set(used, 1);
			for (int station = 0; station < lift.length; station++) {
				above.get(station).set(used, lift[station] * NANOMETRES);
				below.get(station).set(used, lift[station] * NANOMETRES);
			}
		}
	}
}
