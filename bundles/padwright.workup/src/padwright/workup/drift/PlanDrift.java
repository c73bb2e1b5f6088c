package padwright.workup.drift;

import java.util.List;
import java.util.Optional;

import padwright.engine.drift.Climate;
import padwright.engine.drift.Drift;
import padwright.model.plan.Player;
import padwright.model.stock.Stock;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PadBelief;

/**
 * What the way from the bench to the player's home does to the pads of a plan.
 *
 * @param keys in the order of the plan
 */
public record PlanDrift(ServicePlan plan, Climate bench, Climate home, List<KeyDrift> keys) {

	public PlanDrift {
		keys = List.copyOf(keys);
	}

	/** The drift of every row between two climates. */
	public static PlanDrift of(ServicePlan plan, Climate bench, Climate home) {
		List<KeyDrift> keys = plan.jobs().stream().filter(job -> job.key().isPresent())
				.map(job -> key(job, bench, home)).toList();
		return new PlanDrift(plan, bench, home, keys);
	}

	private static KeyDrift key(KeyJob job, Climate bench, Climate home) {
		CupLayers cup = CupLayers.of(job, bench, home);
		return new KeyDrift(job.name(),
				Optional.of(cup.layers()).filter(layers -> !layers.isEmpty())
						.map(layers -> Drift.of(layers, bench, home)),
				cup.unknown(), PadBelief.of(job).model().hinge());
	}

	/**
	 * The climate of the bench, if the plan's stock says it.
	 *
	 * @throws IllegalArgumentException if no air is like that
	 */
	public static Optional<Climate> bench(ServicePlan plan) {
		return plan.stock().map(Stock::getClimate).flatMap(PlanDrift::climate);
	}

	/**
	 * The climate of the player's home, if the plan says it.
	 *
	 * @throws IllegalArgumentException if no air is like that
	 */
	public static Optional<Climate> home(ServicePlan plan) {
		return Optional.ofNullable(plan.plan().getPlayer()).map(Player::getHome).flatMap(PlanDrift::climate);
	}

	/** Nothing where a part of it could not be read. */
	private static Optional<Climate> climate(padwright.model.stock.Climate said) {
		return Optional.ofNullable(said.getTemperature()).flatMap(celsius -> Optional.ofNullable(said.getHumidity())
				.map(humidity -> new Climate(celsius, humidity)));
	}
}
