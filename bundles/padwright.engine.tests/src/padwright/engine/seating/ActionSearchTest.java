package padwright.engine.seating;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.closing.Hinge;
import padwright.engine.evidence.FeltReading;
import padwright.engine.evidence.FeltRound;
import padwright.engine.evidence.FilmInPlace;
import padwright.engine.evidence.LikelyStiffness;
import padwright.engine.evidence.PadModel;
import padwright.engine.evidence.Posterior;
import padwright.engine.evidence.RimCondition;
import padwright.engine.evidence.RimNow;
import padwright.engine.evidence.RimPrior;
import padwright.engine.film.FilmSupply;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.levelling.Stiffness;
import padwright.engine.rim.FeelerSet;

class ActionSearchTest {

	private static final double THOU = 25_400;
	private static final FeelerSet LEAVES = new FeelerSet(Stream.of("0.5", "1").map(Length::thou).toList());
	private static final PadModel PAD = new PadModel(RimPrior.of(RimCondition.TRUE), new Hinge(new ClockHour(4), 0.5),
			0.3, new Stiffness(0.05), 0.3, PadModel.USUAL_FEEL);
	private static final FilmInPlace NOW = new FilmInPlace(
			List.of(new PartialShim(Arc.between(ClockHour.ofHour(2), ClockHour.ofHour(5)), Length.thou("1"))), Length.ZERO);

	/** Every single action, every pair and nothing, by the definition of a closed gap, over the same rims. */
	@ParameterizedTest
	@ValueSource(ints = { 1, 2, 3, 4, 5, 6 })
	void findsTheBestOfAllSetsOfUpToTwoActions(int seed) {
		ActionTable actions = actions(new FilmSupply(Length.thou(seed % 2 == 0 ? "0.5" : "1"), seed < 3 ? 1 : 9));
		PossibleRims rims = rims(new Random(seed));
		double width = 0.6 * THOU;
		ActionSearch search = new ActionSearch(actions, new LevelCount(rims, actions, width),
				new Screen(rims, stiffness(), actions, width), false);
		double best = search.best().stream().filter(set -> set.ids().length <= ActionSearch.PROVEN)
				.mapToDouble(ActionSet::score).max().orElseThrow();
		assertEquals(bestByExhaustion(actions, rims, width), best, 1e-12);
	}

	private static double bestByExhaustion(ActionTable actions, PossibleRims rims, double width) {
		double best = score(actions, rims, width);
		for (int one = 0; one < actions.count(); one++) {
			best = Math.max(best, actions.possible(one) ? score(actions, rims, width, one) : best);
			for (int other = one; other < actions.count(); other++) {
				best = actions.possible(one, other) ? Math.max(best, score(actions, rims, width, one, other)) : best;
			}
		}
		return best;
	}

	private static double score(ActionTable actions, PossibleRims rims, double width, int... ids) {
		int level = 0;
		for (int rim = 0; rim < rims.count(); rim++) {
			double[] gap = rims.rim(rim).gap(actions.lift(ids, rims.rim(rim).stiffnessNode()));
			level += Arrays.stream(gap).max().orElseThrow() <= width ? 1 : 0;
		}
		return level / (double) rims.count() - actions.price(ids);
	}

	private static ActionTable actions(FilmSupply film) {
		FeltRound round = new FeltRound(
				IntStream.range(0, 8).mapToObj(hour -> FeltReading.drag(new ClockHour(3 * hour), LEAVES)).toList(), NOW);
		SeatProblem problem = new SeatProblem(PAD, List.of(round), NOW, List.of(film),
				List.of(Length.thou("0.5"), Length.thou("0.5").negated()), Length.thou("0.5"), Prices.USUAL);
		return new ActionTable(problem, stiffness(), List.of());
	}

	private static LikelyStiffness stiffness() {
		return Posterior.of(PAD, List.of(), NOW).stiffness();
	}

	private static PossibleRims rims(Random random) {
		double[] common = waves(random, 0.6);
		return new PossibleRims(IntStream.range(0, 64).mapToObj(rim -> {
			double[] own = waves(random, 0.15);
			double reach = 0.3 + 0.4 * random.nextDouble();
			double[] weights = new double[24];
			double[] clearance = new double[24];
			for (int station = 0; station < 24; station++) {
				clearance[station] = (common[station] + own[station]) * THOU;
				weights[station] = 1 - reach * Math.cos(2 * Math.PI * station / 24);
			}
			return new RimNow(clearance, weights, random.nextGaussian(), 0.1 * THOU);
		}).toList());
	}

	private static double[] waves(Random random, double deviation) {
		double[] profile = new double[24];
		for (int wave = 1; wave <= 4; wave++) {
			double cosine = deviation / wave * random.nextGaussian();
			double sine = deviation / wave * random.nextGaussian();
			for (int station = 0; station < 24; station++) {
				double angle = 2 * Math.PI * wave * station / 24;
				profile[station] += cosine * Math.cos(angle) + sine * Math.sin(angle);
			}
		}
		return profile;
	}
}
