package padwright.engine.levelling;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

/**
 * Finds the partial shims that level a pad best. Candidates start at a whole hour, are 1 to 11 hours long and of any
 * thickness in stock; they may overlap, and the same may be used twice. Choices are told apart by, in this order: the
 * excess of the spread over the tolerance; the number of pieces; the spread; the mean lift; the film area (Σ hours);
 * the canonical order of their pieces, compared as lists. All in whole nanometres, so that the answer is the same on
 * every machine.
 *
 * <p>A branch and bound over the number of pieces, then over the pieces; the proofs of what it leaves out are in
 * {@link Direction}, {@link Search}, {@link Waves} and {@link IndexQuery}.
 */
public final class Levelling {

	private Levelling() {
	}

	/** The best choice of pieces, proved. */
	public static LevellingSolution solve(LevellingProblem problem) {
		return solve(problem, Budget.unlimited());
	}

	/** The best choice of pieces found within {@code budget}; proved if the search came to its end. */
	public static LevellingSolution solve(LevellingProblem problem, Budget budget) {
		List<FilmSupply> films = problem.films().stream().filter(film -> film.pieces() > 0)
				.sorted(Comparator.comparing(FilmSupply::thickness)).toList();
		List<Length> thicknesses = films.stream().map(FilmSupply::thickness).toList();
		Catalogue catalogue = Catalogue.of(problem.stiffness(), thicknesses);
		Incumbent incumbent = new Incumbent(catalogue.candidates(),
				films.stream().mapToInt(FilmSupply::pieces).toArray(),
				Math.toIntExact(problem.gap().spread().nanometres()));
		Proof proof = search(problem, catalogue, incumbent, new Meter(budget));
		return solution(problem, catalogue.candidates(), incumbent, proof);
	}

	/**
	 * One piece more only where fewer do not reach the tolerance, and only for a smaller spread: the excess is judged
	 * before the number of pieces, and that before the spread.
	 */
	private static Proof search(LevellingProblem problem, Catalogue catalogue, Incumbent incumbent, Meter meter) {
		int[] gap = problem.gap().stream().mapToInt(Math::toIntExact).toArray();
		long tolerance = problem.tolerance().nanometres();
		int most = catalogue.candidates().count() == 0 ? 0 : problem.maxPieces();
		for (int count = 1; count <= most && incumbent.spread() > tolerance; count++) {
			incumbent.beginLevel();
			Search search = new Search(catalogue, incumbent, meter, count);
			search.run(gap);
			if (meter.isSpent()) {
				boolean last = count == most || incumbent.spread() <= tolerance;
				return Proof.bestFound(new Length(last ? search.bound() : 0));
			}
		}
		return Proof.optimal(new Length(incumbent.spread()));
	}

	private static LevellingSolution solution(LevellingProblem problem, CandidatePieces candidates, Incumbent incumbent,
			Proof proof) {
		List<PartialShim> pieces = Arrays.stream(incumbent.pieces()).mapToObj(candidates::piece).toList();
		RimProfile residual = residual(problem, pieces);
		Length spread = residual.spread();
		Length excess = new Length(Math.max(0, spread.minus(problem.tolerance()).nanometres()));
		return new LevellingSolution(pieces, problem.gap().spread(), spread, excess,
				new Length(incumbent.meanLift(incumbent.pieces())), residual, proof);
	}

	private static RimProfile residual(LevellingProblem problem, List<PartialShim> pieces) {
		long[] residual = problem.gap().toNanometres();
		for (PartialShim piece : pieces) {
			RimProfile lift = Lift.of(piece, problem.stiffness());
			Arrays.setAll(residual, station -> residual[station] - lift.nanometresAt(station));
		}
		return RimProfile.ofNanometres(residual);
	}
}
