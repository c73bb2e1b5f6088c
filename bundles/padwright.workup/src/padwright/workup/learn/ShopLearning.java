package padwright.workup.learn;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import padwright.engine.learning.GammaPool;
import padwright.engine.learning.GammaPool.Exposure;
import padwright.engine.learning.Learned;
import padwright.model.plan.Saliva;
import padwright.workup.calibration.PadCalibration;
import padwright.workup.learn.LearnedFigure.Topic;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/**
 * What all plans of a shop tell together.
 *
 * @param plans how many there were
 * @param figures by topic
 */
public record ShopLearning(int plans, List<LearnedFigure> figures) {

	/** Fewer looks at pads that were left level tell nothing. */
	static final int LEAST_LOOKS = 10;
	/** Fewer players tell nothing of players. */
	private static final int LEAST_PLAYERS = 3;

	public ShopLearning {
		figures = List.copyOf(figures);
	}

	/** From plans in any order. */
	public static ShopLearning of(Collection<ServicePlan> plans) {
		return ofFacts(plans.stream().map(PlanFacts::of).toList());
	}

	/** From what plans in any order teach. */
	public static ShopLearning ofFacts(Collection<PlanFacts> plans) {
		List<LearnedFigure> figures = new ArrayList<>(FeltTwice.of(plans));
		figures.addAll(FirstGaps.of(plans));
		PadCalibration.pooled(plans.stream().flatMap(plan -> plan.rounds().stream()).toList())
				.forEach(pad -> figures.add(stiffness(pad)));
		PadLives lives = PadLives.of(plans);
		figures.addAll(lives.settling());
		figures.addAll(lives.openings());
		figures.addAll(lives.lives());
		PlayerTears.bySaliva(plans).forEach((saliva, players) -> figures.add(tearing(saliva, players)));
		return new ShopLearning(plans.size(), figures);
	}

	/** Whether anything can be told. */
	public boolean isTold() {
		return figures.stream().anyMatch(figure -> figure.figure().isPresent());
	}

	private static LearnedFigure stiffness(PadCalibration pad) {
		Phrase evidence = Phrase.of("learn.rounds", pad.rounds(), pad.keys());
		return pad.stiffness().told().map(told -> new LearnedFigure(Topic.STIFFNESS, Phrase.plain(pad.label()), Optional.of(new Learned(
				told.atLeast().lambda(), told.best().lambda(), told.atMost().lambda())), evidence))
				.orElseGet(() -> new LearnedFigure(Topic.STIFFNESS, Phrase.plain(pad.label()), Optional.empty(),
						pad.stiffness().why()));
	}

	private static LearnedFigure tearing(Optional<Saliva> saliva, List<Exposure> players) {
		Phrase evidence = Phrase.of("learn.players", players.size(), players.stream().mapToInt(Exposure::count).sum());
		return players.size() < LEAST_PLAYERS
				? new LearnedFigure(Topic.TEARING, SalivaPhrase.of(saliva), Optional.empty(), Phrase.of("learn.fewPlayers", evidence))
				: LearnedFigure.of(Topic.TEARING, SalivaPhrase.of(saliva), new GammaPool(players).mean(), evidence);
	}
}
