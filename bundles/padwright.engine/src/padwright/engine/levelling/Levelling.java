package padwright.engine.levelling;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

/** Finds the partial shims that level a pad best. First version: exhaustive. */
public final class Levelling {

	private Levelling() {
	}

	/** The best choice of pieces, proved. */
	public static LevellingSolution solve(LevellingProblem problem) {
		return solve(problem, Budget.unlimited());
	}

	/** The best choice of pieces found within {@code budget}. */
	public static LevellingSolution solve(LevellingProblem problem, Budget budget) {
		return new Exhaustive(problem, budget).solve();
	}

	private static final class Exhaustive {
		private final LevellingProblem problem;
		private final Budget budget;
		private final List<PartialShim> candidates = new ArrayList<>();
		private final List<Integer> filmOf = new ArrayList<>();
		private final List<long[]> lifts = new ArrayList<>();
		private final int[] left;
		private final long deadline;
		private final List<Integer> chosen = new ArrayList<>();
		private List<Integer> best = List.of();
		private long[] bestKey;
		private long nodes;
		private boolean ended;

		Exhaustive(LevellingProblem problem, Budget budget) {
			this.problem = problem;
			this.budget = budget;
			this.deadline = System.nanoTime() + Math.min(budget.time().toSeconds(), 1_000_000_000) * 1_000_000_000L
					+ budget.time().toNanosPart();
			List<FilmSupply> films = problem.films().stream()
					.sorted(java.util.Comparator.comparing(FilmSupply::thickness)).toList();
			left = films.stream().mapToInt(FilmSupply::pieces).toArray();
			for (int hour = 0; hour < 12; hour++) {
				for (int hours = 1; hours <= 11; hours++) {
					for (int film = 0; film < films.size(); film++) {
						PartialShim piece = new PartialShim(new Arc(new ClockHour(2 * hour), 2 * hours),
								films.get(film).thickness());
						candidates.add(piece);
						filmOf.add(film);
						lifts.add(Lift.of(piece, problem.stiffness()).toNanometres());
					}
				}
			}
		}

		LevellingSolution solve() {
			long[] gap = problem.gap().toNanometres();
			for (int count = 0; count <= problem.maxPieces() && (bestKey == null || bestKey[0] > 0); count++) {
				search(gap, 0, count);
			}
			List<PartialShim> pieces = best.stream().map(candidates::get).toList();
			long[] residual = gap;
			for (int index : best) {
				residual = less(residual, lifts.get(index));
			}
			RimProfile after = RimProfile.ofNanometres(residual);
			Length spread = after.spread();
			return new LevellingSolution(pieces, problem.gap().spread(), spread, new Length(bestKey[0]),
					new Length(bestKey[3]), after, ended ? Proof.bestFound(Length.ZERO) : Proof.optimal(spread));
		}

		private void search(long[] residual, int from, int missing) {
			if (ended || ++nodes > budget.nodes() || (nodes & 1023) == 0 && System.nanoTime() > deadline) {
				ended = bestKey != null;
				if (ended) {
					return;
				}
			}
			if (missing == 0) {
				judge(residual);
				return;
			}
			for (int index = from; index < candidates.size(); index++) {
				int film = filmOf.get(index);
				if (left[film] > 0) {
					left[film]--;
					chosen.add(index);
					search(less(residual, lifts.get(index)), index, missing - 1);
					chosen.remove(chosen.size() - 1);
					left[film]++;
				}
			}
		}

		private void judge(long[] residual) {
			long spread = RimProfile.ofNanometres(residual).spread().nanometres();
			long lift = 0;
			long hours = 0;
			for (int index : chosen) {
				PartialShim piece = candidates.get(index);
				lift += piece.thickness().nanometres() * piece.arc().halfHours();
				hours += piece.arc().halfHours();
			}
			long excess = Math.max(0, spread - problem.tolerance().nanometres());
			long[] key = {excess, chosen.size(), spread, Math.floorDiv(lift + 12, 24), hours};
			if (bestKey == null || java.util.Arrays.compare(key, bestKey) < 0) {
				bestKey = key;
				best = List.copyOf(chosen);
			}
		}

		private static long[] less(long[] residual, long[] lift) {
			long[] after = residual.clone();
			for (int station = 0; station < after.length; station++) {
				after[station] -= lift[station];
			}
			return after;
		}
	}
}
