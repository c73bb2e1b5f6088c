package padwright.engine.seating;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import padwright.engine.clock.Arc;
import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.GapBand;
import padwright.engine.evidence.Posterior;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/**
 * Finds what to do under a pad: of all sets of pieces to place, pieces to take out and changes of the full shims within
 * the film in stock and at most four pieces in place, the one with the greatest expected gain, over a sample of the rims
 * that the readings leave possible.
 *
 * <p>The aim lies below the seat by the scatter of the hand, so that the next feel passes too. Where hardly a rim can be
 * brought within the aim yet, a wider one is aimed at, so that the next round starts from less. The same answer on every
 * machine.
 */
public final class Seating {

	/** Rims that choose; the others of the sample tell the chance. */
	private static final int DECIDING = 256;
	/** Times the aim, where fewer rims can be brought within it than are worth working for. */
	private static final double[] WIDER = { 1, 1.5, 2.25, 3.5, 6 };
	private static final double WORTH_SEARCHING = 0.06;
	private static final double WORTH_WORKING = 0.15;

	private final SeatProblem problem;
	private final List<Arc> unread;
	private final Posterior posterior;
	private final ActionTable actions;
	private final PossibleRims deciding;
	private final Outcome outcome;
	private final double seat;

	private Seating(SeatProblem problem) {
		this.problem = problem;
		unread = UnreadArcs.of(problem.rounds());
		posterior = Posterior.of(problem.pad(), problem.rounds(), problem.now());
		actions = new ActionTable(problem, posterior.stiffness(), unread);
		deciding = new PossibleRims(posterior.rims().subList(0, DECIDING));
		outcome = new Outcome(posterior,
				new PossibleRims(posterior.rims().subList(DECIDING, posterior.rims().size())), actions);
		seat = problem.seat().nanometres();
	}

	/** The best that can be done. */
	public static SeatAnswer solve(SeatProblem problem) {
		return new Seating(problem).solve();
	}

	private SeatAnswer solve() {
		double chanceNow = Outcome.within(outcome.gaps(), seat);
		if (lastRound().nothingDrags()) {
			return answer(new int[0], Optional.of(WhyNothing.HELD_OFF), chanceNow, Optional.empty(), Limit.UNREAD_HOURS);
		}
		if (chanceNow >= problem.prices().bar()) {
			return answer(new int[0], Optional.of(WhyNothing.LEVEL_ENOUGH), chanceNow, Optional.empty(), Limit.NONE);
		}
		Choice choice = choose();
		WorthOfKnowing worth = new WorthOfKnowing(deciding, choice.table(), problem.pad().hinge().side());
		Optional<NextHour> next = worth.nextHour(problem.rounds());
		Optional<WhyNothing> nothing = choice.ids().length > 0 ? Optional.empty()
				: Optional.of(actions.count() == 0 ? WhyNothing.NO_FILM : WhyNothing.NO_FILM_HELPS);
		double chance = Outcome.within(outcome.gaps(choice.ids()), seat);
		return answer(choice.ids(), nothing, chanceNow, next, worth.limit(next, chance, problem.prices().bar()));
	}

	private FeltRound lastRound() {
		return problem.rounds().get(problem.rounds().size() - 1);
	}

	/**
	 * What was chosen.
	 *
	 * @param table what single actions and the best sets do to the rims that chose
	 */
	private record Choice(int[] ids, LevelTable table) {
	}

	private Choice choose() {
		double aim = Math.max(seat / 2, seat - problem.pad().feel().nanometres());
		Choice last = null;
		for (double wider : WIDER) {
			ActionSearch search = new ActionSearch(actions, new LevelCount(deciding, actions, aim * wider),
					new Screen(deciding, posterior.stiffness(), aim * wider), mustAct());
			ActionSet best = search.bestOfOne();
			if (best.level() >= WORTH_SEARCHING * deciding.count()) {
				best = search.best();
			}
			last = new Choice(best.ids(), search.table());
			if (best.level() >= WORTH_WORKING * deciding.count()) {
				return last;
			}
		}
		return last;
	}

	/** A leaf as thick as the seat slides: then nothing is no answer. */
	private boolean mustAct() {
		return lastRound().readings().stream().anyMatch(reading -> !reading.drags()
				&& !reading.above().isShorterThan(problem.seat()));
	}

	private SeatAnswer answer(int[] ids, Optional<WhyNothing> nothing, double chanceNow, Optional<NextHour> next,
			Limit limit) {
		List<Action> done = Arrays.stream(ids).mapToObj(actions::action).toList();
		List<double[]> after = new ArrayList<>(List.of(outcome.gaps(ids)));
		return new SeatAnswer(pieces(done, false), pieces(done, true),
				done.stream().map(Action::fullShims).reduce(Length.ZERO, Length::plus), nothing, chanceNow,
				Outcome.within(outcome.gaps(ids), seat), posterior.band(),
				GapBand.of(after, problem.pad().hinge().side()), limit, next, posterior.doubted(), unread,
				ids.length <= ActionSearch.PROVEN);
	}

	private static List<PartialShim> pieces(List<Action> done, boolean taken) {
		return done.stream().filter(action -> action.taken() == taken).flatMap(action -> action.piece().stream())
				.sorted(PartialShim.BY_CLOCK).toList();
	}
}
