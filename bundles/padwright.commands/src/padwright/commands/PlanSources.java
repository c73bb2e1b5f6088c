package padwright.commands;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;

import padwright.language.shop.Shop;
import padwright.model.Resolved;
import padwright.model.plan.Plan;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.rules.ShopRules;
import padwright.workup.service.ServicePlan;

/**
 * The files that a plan draws on: its key system with all that this extends, and its stock with all whose rules hold.
 *
 * @param found the files that were found
 * @param systemIsMissing the plan's key system is nowhere, so that any file of systems may be the cause
 * @param stockIsMissing the plan names a stock that is nowhere
 */
record PlanSources(Set<Resource> found, boolean systemIsMissing, boolean stockIsMissing) {

	static PlanSources of(ServicePlan service) {
		Plan plan = service.plan();
		Stream<EObject> sources = Stream.concat(EffectiveSystem.lineage(plan.getSystem()).stream(),
				service.stock().map(ShopRules::sources).stream().flatMap(List::stream));
		return new PlanSources(sources.map(EObject::eResource).collect(Collectors.toSet()),
				Resolved.of(plan.getSystem()).isEmpty(), plan.getStock() != null && service.stock().isEmpty());
	}

	/** Whether a file is one of these, or may be the one that is missing. */
	boolean mayBe(Shop shop, Path file) {
		return systemIsMissing && file.toString().endsWith(".keys")
				|| stockIsMissing && file.toString().endsWith(".stock")
				|| Optional.ofNullable(shop.resource(file)).filter(found::contains).isPresent();
	}
}
