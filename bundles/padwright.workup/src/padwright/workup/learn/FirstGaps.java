package padwright.workup.learn;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.evidence.RimCondition;
import padwright.engine.learning.LifeBracket;
import padwright.engine.learning.WeibullLife;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.plan.Round;
import padwright.workup.learn.LearnedFigure.Topic;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.LeafReading;
import padwright.workup.solve.PadBelief;
import padwright.workup.words.Phrase;

/** The gaps at the hours of the first round of each pad, by the condition of rim and cup: between two leaves each. */
final class FirstGaps {

	private FirstGaps() {
	}

	static List<LearnedFigure> of(Collection<PlanFacts> plans) {
		Map<RimCondition, List<LifeBracket>> all = new EnumMap<>(RimCondition.class);
		plans.forEach(plan -> plan.gaps().forEach((condition, gaps) -> all
				.computeIfAbsent(condition, unseen -> new ArrayList<>()).addAll(gaps)));
		return all.entrySet().stream().map(group -> figure(group.getKey(), group.getValue())).toList();
	}

	/** Of one plan; nothing where no pad was felt. */
	static Map<RimCondition, List<LifeBracket>> in(ServicePlan plan) {
		Map<RimCondition, List<LifeBracket>> gaps = new EnumMap<>(RimCondition.class);
		plan.jobs().forEach(job -> job.service().getRounds().stream().findFirst().map(round -> brackets(job, round))
				.filter(brackets -> !brackets.isEmpty()).ifPresent(brackets -> gaps
						.computeIfAbsent(PadBelief.condition(job), unseen -> new ArrayList<>()).addAll(brackets)));
		return gaps;
	}

	private static LearnedFigure figure(RimCondition condition, List<LifeBracket> gaps) {
		Phrase of = switch (condition) {
		case TRUE -> Phrase.of("learn.true");
		case DRAWN -> Phrase.of("learn.drawn");
		case ROUGH -> Phrase.of("learn.rough");
		};
		long open = gaps.stream().filter(gap -> gap.from() > 0).count();
		Phrase evidence = Phrase.of("learn.gaps", gaps.size(), open);
		return open < WeibullLife.LEAST_FAILURES
				? new LearnedFigure(Topic.ROUGHNESS, of, Optional.empty(), Phrase.of("learn.fewGaps", evidence))
				: LearnedFigure.of(Topic.ROUGHNESS, of, new WeibullLife(gaps).median(), evidence);
	}

	private static List<LifeBracket> brackets(KeyJob job, Round round) {
		List<Length> leaves = job.plan().feelers();
		return leaves.isEmpty() ? List.of()
				: LeafReading.of(round).stream().flatMap(reading -> bracket(reading, leaves).stream()).toList();
	}

	private static Optional<LifeBracket> bracket(LeafReading reading, List<Length> leaves) {
		if (reading.slides().isEmpty()) {
			return Optional.of(new LifeBracket(0, thou(leaves.get(0))));
		}
		int thickest = leaves.indexOf(reading.slides().get());
		if (thickest < 0) {
			return Optional.empty();
		}
		return Optional.of(new LifeBracket(thou(leaves.get(thickest)), thickest + 1 < leaves.size()
				? thou(leaves.get(thickest + 1)) : Double.POSITIVE_INFINITY));
	}

	private static double thou(Length leaf) {
		return leaf.in(LengthUnit.THOU, 4).doubleValue();
	}
}
