package padwright.engine.levelling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;

/**
 * The oracle: tries every choice of at most so many pieces, and compares them by the definition. Shares only the lift of
 * one piece with the solver, no search.
 */
final class ExhaustiveLevelling {

	/** What choices are compared by, in order, and the pieces. */
	record Answer(long excess, int count, long spread, long meanLift, int hours, List<PartialShim> pieces) {
	}

	private final LevellingProblem problem;
	private final List<FilmSupply> films;
	private final List<PartialShim> candidates = new ArrayList<>();
	private final List<long[]> lifts = new ArrayList<>();
	private final List<Integer> filmOf = new ArrayList<>();
	private final int[] left;
	private final int[] chosen = new int[LevellingProblem.MOST_PIECES];
	private int[] best;
	private long[] bestKey;

	private ExhaustiveLevelling(LevellingProblem problem) {
		this.problem = problem;
		this.films = problem.films().stream().sorted(Comparator.comparing(FilmSupply::thickness)).toList();
		this.left = films.stream().mapToInt(FilmSupply::pieces).toArray();
		for (int start = 0; start < 12; start++) {
			for (int hours = 1; hours <= 11; hours++) {
				for (int film = 0; film < films.size(); film++) {
					Arc arc = new Arc(new ClockHour(2 * start), 2 * hours);
					PartialShim piece = new PartialShim(arc, films.get(film).thickness());
					candidates.add(piece);
					filmOf.add(film);
					lifts.add(Lift.of(piece, problem.stiffness()).toNanometres());
				}
			}
		}
	}

	static Answer solve(LevellingProblem problem) {
		ExhaustiveLevelling search = new ExhaustiveLevelling(problem);
		for (int count = 0; count <= problem.maxPieces(); count++) {
			search.tryAll(problem.gap().toNanometres(), count, 0, 0);
		}
		List<PartialShim> pieces = Arrays.stream(search.best).mapToObj(search.candidates::get).toList();
		long[] key = search.bestKey;
		return new Answer(key[0], (int) key[1], key[2], key[3], (int) key[4], pieces);
	}

	/** Choices rise in canonical order, so the first of equals is the one to keep. */
	private void tryAll(long[] residual, int count, int depth, int from) {
		if (depth == count) {
			judge(residual, count);
			return;
		}
		for (int index = from; index < candidates.size(); index++) {
			int film = filmOf.get(index);
			if (left[film] == 0) {
				continue;
			}
			left[film]--;
			chosen[depth] = index;
			long[] lift = lifts.get(index);
			long[] after = new long[residual.length];
			for (int station = 0; station < after.length; station++) {
				after[station] = residual[station] - lift[station];
			}
			tryAll(after, count, depth + 1, index);
			left[film]++;
		}
	}

	private void judge(long[] residual, int count) {
		long high = residual[0];
		long low = residual[0];
		for (long gap : residual) {
			high = Math.max(high, gap);
			low = Math.min(low, gap);
		}
		long spread = high - low;
		long excess = Math.max(0, spread - problem.tolerance().nanometres());
		if (bestKey != null && (excess > bestKey[0] || excess == bestKey[0]
				&& (count > bestKey[1] || count == bestKey[1] && spread > bestKey[2]))) {
			return;
		}
		long volume = 0;
		int hours = 0;
		for (int piece = 0; piece < count; piece++) {
			PartialShim shim = candidates.get(chosen[piece]);
			volume += shim.thickness().nanometres() * shim.arc().halfHours() / 2;
			hours += shim.arc().halfHours() / 2;
		}
		long[] key = {excess, count, spread, Math.round(volume / 12.0), hours};
		if (bestKey == null || Arrays.compare(key, bestKey) < 0) {
			bestKey = key;
			best = Arrays.copyOf(chosen, count);
		}
	}
}
