package padwright.workup.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import padwright.engine.calibration.CalibrationResult.Calibrated;
import padwright.engine.calibration.CalibrationResult.Undecided;
import padwright.engine.learning.GammaPool;
import padwright.engine.learning.GammaPool.Exposure;
import padwright.engine.learning.Learned;
import padwright.workup.calibration.PadCalibration;
import padwright.workup.forecast.PlayerForecast;
import padwright.workup.forecast.ShopForecast;
import padwright.workup.learn.LearnedFigure.Topic;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Messages;

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
		List<LearnedFigure> figures = new ArrayList<>(FeltTwice.of(plans));
		figures.addAll(FirstGaps.of(plans));
		PadCalibration.of(plans).forEach(pad -> figures.add(stiffness(pad)));
		PadLives lives = PadLives.of(plans);
		figures.addAll(lives.openings());
		figures.addAll(lives.lives());
		figures.addAll(tearing(plans));
		return new ShopLearning(plans.size(), figures);
	}

	/** Whether anything can be told. */
	public boolean isTold() {
		return figures.stream().anyMatch(figure -> figure.figure().isPresent());
	}

	private static LearnedFigure stiffness(PadCalibration pad) {
		String evidence = Messages.of("learn.rounds", pad.rounds(), pad.keys());
		return pad.result() instanceof Calibrated told
				? new LearnedFigure(Topic.STIFFNESS, pad.label(), Optional.of(new Learned(told.atLeast().lambda(),
						told.best().lambda(), told.atMost().lambda())), evidence)
				: new LearnedFigure(Topic.STIFFNESS, pad.label(), Optional.empty(), ((Undecided) pad.result()).why());
	}

	private static List<LearnedFigure> tearing(Collection<ServicePlan> plans) {
		Map<String, List<Exposure>> bySaliva = new TreeMap<>();
		for (PlayerForecast player : ShopForecast.of(plans, LocalDate.EPOCH).players()) {
			if (player.years() > 0) {
				bySaliva.computeIfAbsent(player.saliva().map(SalivaWords::of).orElseGet(() -> Messages.of("learn.unsaid")),
						unseen -> new ArrayList<>()).add(new Exposure(player.torn(), player.years()));
			}
		}
		return bySaliva.entrySet().stream().map(group -> tearing(group.getKey(), group.getValue())).toList();
	}

	private static LearnedFigure tearing(String saliva, List<Exposure> players) {
		String evidence = Messages.of("learn.players", players.size(), players.stream().mapToInt(Exposure::count).sum());
		return players.size() < LEAST_PLAYERS
				? new LearnedFigure(Topic.TEARING, saliva, Optional.empty(), Messages.of("learn.fewPlayers", evidence))
				: LearnedFigure.of(Topic.TEARING, saliva, new GammaPool(players).mean(), evidence);
	}
}
