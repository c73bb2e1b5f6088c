package padwright.workup.learn;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import padwright.engine.clock.ClockHour;
import padwright.engine.learning.FeelScatter;
import padwright.engine.learning.FeelScatter.Pair;
import padwright.engine.learning.Learned;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.plan.Round;
import padwright.workup.learn.LearnedFigure.Topic;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.LeafReading;
import padwright.workup.words.Phrase;

/** Hours that were felt twice with nothing changed between, and what they tell of the hand. */
final class FeltTwice {

	/** Of one plan, which is felt with one set of leaves. */
	record Pairs(List<Length> leaves, List<Pair> pairs) {
	}

	private FeltTwice() {
	}

	static List<LearnedFigure> of(Collection<PlanFacts> plans) {
		Map<List<Length>, List<Pair>> all = new TreeMap<>((some, others) -> some.toString().compareTo(others.toString()));
		plans.stream().flatMap(plan -> plan.felt().stream()).forEach(felt -> all
				.computeIfAbsent(felt.leaves(), unseen -> new ArrayList<>()).addAll(felt.pairs()));
		return all.entrySet().stream().map(pairs -> figure(pairs.getKey(), pairs.getValue())).toList();
	}

	/** Nothing where no hour was felt twice. */
	static Optional<Pairs> in(ServicePlan plan) {
		List<Length> leaves = plan.feelers();
		List<Pair> pairs = new ArrayList<>();
		if (!leaves.isEmpty()) {
			plan.jobs().forEach(job -> add(job, leaves, pairs));
		}
		return pairs.isEmpty() ? Optional.empty() : Optional.of(new Pairs(leaves, pairs));
	}

	private static LearnedFigure figure(List<Length> leaves, List<Pair> pairs) {
		Phrase of = Phrase.of("learn.leaves", leaves.get(0), leaves.get(leaves.size() - 1));
		if (!FeelScatter.canTell(pairs)) {
			return new LearnedFigure(Topic.FEEL, of, Optional.empty(), Phrase.of("learn.fewPairs", pairs.size()));
		}
		Learned scatter = new FeelScatter(leaves.stream().mapToDouble(FeltTwice::thou).toArray()).of(pairs);
		return LearnedFigure.of(Topic.FEEL, of, scatter, Phrase.of("learn.pairs", pairs.size()));
	}

	private static double thou(Length leaf) {
		return leaf.in(LengthUnit.THOU, 4).doubleValue();
	}

	private static void add(KeyJob job, List<Length> leaves, List<Pair> pairs) {
		List<Round> rounds = job.allRounds();
		for (int index = 1; index < rounds.size(); index++) {
			if (isUnchanged(rounds.get(index - 1))) {
				pairs.addAll(pair(job, rounds.get(index - 1), rounds.get(index), leaves));
			}
		}
	}

	private static boolean isUnchanged(Round round) {
		return round.isLevel() && round.getFull() == null && round.getRemoved().isEmpty();
	}

	private static List<Pair> pair(KeyJob job, Round first, Round second, List<Length> leaves) {
		List<Pair> pairs = new ArrayList<>();
		List<ClockHour> before = job.hours(first);
		List<ClockHour> after = job.hours(second);
		List<LeafReading> felt = LeafReading.of(first);
		List<LeafReading> again = LeafReading.of(second);
		if (before.size() != felt.size() || after.size() != again.size()) {
			return pairs;
		}
		for (int index = 0; index < before.size(); index++) {
			int same = after.indexOf(before.get(index));
			if (same >= 0) {
				int one = leaf(felt.get(index), leaves);
				int other = leaf(again.get(same), leaves);
				if (one >= 0 && other >= 0) {
					pairs.add(new Pair(one, other));
				}
			}
		}
		return pairs;
	}

	/** How many leaves slide free; below zero for one that the stock does not have. */
	private static int leaf(LeafReading reading, List<Length> leaves) {
		if (reading.slides().isEmpty()) {
			return 0;
		}
		int thickest = leaves.indexOf(reading.slides().get());
		return thickest < 0 ? -1 : thickest + 1;
	}
}
