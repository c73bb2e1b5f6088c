package padwright.workup.regulate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.engine.coupling.CouplingGraph;
import padwright.engine.coupling.Upset;
import padwright.engine.length.Length;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;

/**
 * How to regulate the linked keys of a solved plan.
 *
 * @param steps every coupling of the key system in the order of work
 * @param changes the keys whose bed becomes thicker or thinner, in the order of the plan
 * @param upsets the light that those changes will leave if all was regulated before
 */
public record RegulationWork(ServicePlan plan, List<RegulationStep> steps, List<BedChange> changes,
		List<Upset> upsets) {

	public RegulationWork {
		steps = List.copyOf(steps);
		changes = List.copyOf(changes);
		upsets = List.copyOf(upsets);
	}

	/** @throws padwright.engine.coupling.CircularCouplingException if keys close each other in a circle */
	public static RegulationWork of(PlanSolution solution) {
		ServicePlan plan = solution.plan();
		CouplingGraph couplings = PlanCouplings.graph(plan);
		List<RegulationStep> steps = couplings.couplingsInOrderOfWork().stream()
				.map(coupling -> new RegulationStep(coupling, FoundLight.at(plan, coupling))).toList();
		List<BedChange> changes = solution.keys().stream().filter(key -> key.job().key().isPresent())
				.map(BedChange::of).filter(change -> change.total().signum() != 0).toList();
		return new RegulationWork(plan, steps, changes, couplings.upsets(totals(changes), levers(plan)));
	}

	private static Set<String> levers(ServicePlan plan) {
		return plan.system().keys().stream().filter(EffectiveKey::isLever).map(EffectiveKey::name)
				.collect(Collectors.toSet());
	}

	/** Of two rows for one key, which a check reports, the last counts. */
	private static Map<String, Length> totals(List<BedChange> changes) {
		Map<String, Length> totals = new LinkedHashMap<>();
		changes.forEach(change -> totals.put(change.key(), change.total()));
		return totals;
	}
}
