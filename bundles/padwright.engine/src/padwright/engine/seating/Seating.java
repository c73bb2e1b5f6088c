package padwright.engine.seating;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import padwright.engine.clock.Arc;
import padwright.engine.evidence.FeltReading;
import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.GapBand;
import padwright.engine.evidence.Posterior;
import padwright.engine.evidence.RimNow;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/**
 * Finds what to do under a pad: of all sets of pieces to place, pieces to take out and changes of the full shims within
 * the film in stock and at most four pieces in place, the one with the greatest expected gain, over a sample of the rims
 * that the readings leave possible.
 *
 * <p>Some rims of the sample find the few best sets of actions, others pick among them, and others again tell the chance,
 * so that it is not made better than it is by having been chosen. The aim lies below the seat by twice the scatter of the
 * hand, so that the next feel passes too. Where hardly a rim can be brought within the aim yet, a wider
 * one is aimed at, so that the next round starts from less. The same answer on every machine.
 */
public final class Seating {

	/** Rims that find the best sets, and those that pick among them; the others tell the chance. */
	private static final int FINDING = 64;
	private static final int PICKING = 448;
	/** Single actions that may be of use once more is known. */
	private static final int SINGLES = 96;
	/** Times the scatter of the hand. */
	private static final double BELOW_THE_SEAT = 2;
	/** Times the aim, where fewer rims can be brought within it than are worth working for. */
	private static final double[] WIDER = { 1, 1.5, 2.25, 3.5, 6 };
	private static final double WORTH_WORKING = 0.15;

	private final SeatProblem problem;
	private final List<Arc> unread;
	private final Posterior posterior;
	private final ActionTable actions;
	private final PossibleRims finding;
	private final PossibleRims picking;
	private final Outcome outcome;
	private final double seat;

	private Seating(SeatProblem problem) {
		this.problem = problem;
		unread = UnreadArcs.of(problem.rounds());
		posterior = Posterior.of(problem.pad(), problem.rounds(), problem.now());
		actions = new ActionTable(problem, posterior.stiffness(), unread);
		List<RimNow> rims = posterior.rims();
		finding = new PossibleRims(rims.subList(0, FINDING));
		picking = new PossibleRims(rims.subList(FINDING, FINDING + PICKING));
		outcome = new Outcome(posterior, new PossibleRims(rims.subList(FINDING + PICKING, rims.size())), actions);
		seat = problem.seat().nanometres();
	}

	/** The best that can be done. */
	public static SeatAnswer solve(SeatProblem problem) {
		return new Seating(problem).solve();
	}

	private SeatAnswer solve() {
		// Nothing was chosen for it, so every rim may tell.
		double chanceNow = posterior.chanceWithin(problem.seat());
		if (lastRound().nothingDrags()) {
			return answer(new int[0], Optional.of(WhyNothing.HELD_OFF), chanceNow, Optional.empty(), Limit.UNREAD_HOURS);
		}
		if (chanceNow >= problem.prices().bar()) {
			Optional<NextHour> next = chanceNow < problem.prices().sure() && everyHourDrags()
					? worthOfKnowing(table(List.of(), List.of(), seat)).hourToMakeSure(problem.rounds())
					: Optional.empty();
			return answer(new int[0], Optional.of(WhyNothing.LEVEL_ENOUGH), chanceNow, next, Limit.NONE);
		}
		Choice choice = choose();
		WorthOfKnowing worth = worthOfKnowing(choice.table());
		Optional<NextHour> next = everyHourDrags() ? worth.hourToMakeSure(problem.rounds())
				: worth.nextHour(problem.rounds());
		Optional<WhyNothing> nothing = choice.ids().length > 0 ? Optional.empty()
				: Optional.of(actions.count() == 0 ? WhyNothing.NO_FILM : WhyNothing.NO_FILM_HELPS);
		double chance = Outcome.within(outcome.gaps(choice.ids()), seat);
		return answer(choice.ids(), nothing, chanceNow, next, worth.limit(next, chance, problem.prices().bar()));
	}

	private WorthOfKnowing worthOfKnowing(LevelTable table) {
		return new WorthOfKnowing(picking, table, problem.pad().hinge().side(), seat);
	}

	private boolean everyHourDrags() {
		return lastRound().readings().stream().allMatch(FeltReading::drags);
	}

	private FeltRound lastRound() {
		return problem.rounds().get(problem.rounds().size() - 1);
	}

	/**
	 * What was chosen.
	 *
	 * @param table what nothing, single actions and the best sets do to the rims that picked
	 */
	private record Choice(int[] ids, LevelTable table) {
	}

	private Choice choose() {
		double aim = Math.max(seat / 2, seat - BELOW_THE_SEAT * problem.pad().feel().nanometres());
		for (int step = 0;; step++) {
			double wider = WIDER[step];
			ActionSearch search = new ActionSearch(actions, new LevelCount(finding, actions, aim * wider),
					new Screen(finding, posterior.stiffness(), actions, aim * wider), mustAct());
			List<ActionSet> best = search.best();
			if (step == WIDER.length - 1 || best.get(0).level() >= WORTH_WORKING * finding.count()) {
				return new Choice(pick(best, seat * wider), table(best, search.bestSingles(SINGLES), aim * wider));
			}
		}
	}

	private LevelTable table(List<ActionSet> best, List<Integer> singles, double width) {
		List<int[]> sets = new ArrayList<>(List.of(new int[0]));
		best.forEach(set -> sets.add(set.ids()));
		singles.forEach(one -> sets.add(new int[] { one }));
		return new LevelTable(sets, new LevelCount(picking, actions, width), actions);
	}

	/** The set that leaves least open: worth nothing where it leaves more than {@code width} open, all at a fifth of it. */
	private int[] pick(List<ActionSet> sets, double width) {
		Outcome outcomes = new Outcome(posterior, picking, actions);
		int[] picked = null;
		double most = Double.NEGATIVE_INFINITY;
		for (ActionSet set : sets) {
			double worth = Outcome.closeness(outcomes.gaps(set.ids()), width / 5, width) - actions.price(set.ids());
			if (worth > most) {
				most = worth;
				picked = set.ids();
			}
		}
		return picked;
	}

	/** A leaf as thick as the seat slides: then nothing is no answer. */
	private boolean mustAct() {
		return lastRound().readings().stream().anyMatch(reading -> !reading.drags()
				&& !reading.above().isShorterThan(problem.seat()));
	}

	private SeatAnswer answer(int[] ids, Optional<WhyNothing> nothing, double chanceNow, Optional<NextHour> next,
			Limit limit) {
		List<Action> done = Arrays.stream(ids).mapToObj(actions::action).toList();
		double[][] after = outcome.gaps(ids);
		double chance = done.isEmpty() ? chanceNow : Outcome.within(after, seat);
		GapBand band = done.isEmpty() ? posterior.band() : GapBand.of(List.of(after), problem.pad().hinge().side());
		return new SeatAnswer(pieces(done, false), pieces(done, true),
				done.stream().map(Action::fullShims).reduce(Length.ZERO, Length::plus), nothing, chanceNow, chance,
				posterior.band(), band, limit, next, posterior.doubted(), unread, ids.length <= ActionSearch.PROVEN);
	}

	private static List<PartialShim> pieces(List<Action> done, boolean taken) {
		return done.stream().filter(action -> action.taken() == taken).flatMap(action -> action.piece().stream())
				.sorted(PartialShim.BY_CLOCK).toList();
	}
}
