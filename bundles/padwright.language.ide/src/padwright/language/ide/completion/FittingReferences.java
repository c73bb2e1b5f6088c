package padwright.language.ide.completion;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;
import org.eclipse.xtext.resource.IEObjectDescription;

import padwright.language.ide.facts.Rows;
import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Regulation;
import padwright.model.stock.Assortment;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.service.CupFit;
import padwright.workup.service.ServicePlan;

/** Which of the names that could be linked make sense at a place. */
final class FittingReferences {

	private static final Map<EReference, BiPredicate<EObject, EObject>> SENSE = Map.of(
			PlanPackage.Literals.KEY_SERVICE__KEY, FittingReferences::isWithoutRow,
			PlanPackage.Literals.REGULATION__DRIVER, FittingReferences::drivesAny,
			PlanPackage.Literals.REGULATION__DRIVEN, FittingReferences::isDriven,
			PlanPackage.Literals.FITTING__PAD, FittingReferences::entersCup,
			PlanPackage.Literals.FITTING__BACKING, FittingReferences::entersCup,
			KeySystemPackage.Literals.KEY_CHANGE__KEY, FittingReferences::isInherited,
			KeySystemPackage.Literals.KEY_REMOVAL__KEY, FittingReferences::isInherited,
			KeySystemPackage.Literals.KEY_FEATURES__WHOLE, (key, context) -> key != context,
			KeySystemPackage.Literals.COUPLING__DRIVEN, (key, context) -> key != context,
			KeySystemPackage.Literals.KEY_SYSTEM__BASE, (base, context) -> base != context);

	boolean fits(IEObjectDescription candidate, CrossReference reference, ContentAssistContext context) {
		EObject place = context.getCurrentModel();
		EObject element = EcoreUtil.resolve(candidate.getEObjectOrProxy(), place);
		return !isLongForm(candidate, element, place)
				&& SENSE.getOrDefault(GrammarUtil.getReference(reference), (any, here) -> true).test(element, place);
	}

	/** Articles of the plan's own stock go by their name alone. */
	private static boolean isLongForm(IEObjectDescription candidate, EObject element, EObject place) {
		Plan plan = EcoreUtil2.getContainerOfType(place, Plan.class);
		return candidate.getName().getSegmentCount() > 1 && plan != null && element.eContainer() == plan.getStock();
	}

	private static boolean isWithoutRow(EObject key, EObject place) {
		return Rows.plan(place).map(ServicePlan::missingKeys).stream().flatMap(Collection::stream)
				.anyMatch(missing -> missing.definition() == key);
	}

	private static boolean drivesAny(EObject key, EObject place) {
		return !driven(key, place).isEmpty();
	}

	private static boolean isDriven(EObject key, EObject place) {
		return place instanceof Regulation regulation && driven(regulation.getDriver(), place).contains(key);
	}

	private static Collection<EObject> driven(EObject driver, EObject place) {
		return Rows.plan(place).flatMap(plan -> plan.system().key((Key) driver)).map(EffectiveKey::closes)
				.orElse(List.of()).stream().map(coupling -> Resolved.of(coupling.getDriven())).flatMap(Optional::stream)
				.collect(Collectors.toSet());
	}

	/** Where the cup is known, only what enters it. */
	private static boolean entersCup(EObject article, EObject place) {
		Assortment diameters = article instanceof Pad pad ? pad.getDiameters() : ((Backing) article).getDiameters();
		return diameters == null || Rows.around(place).flatMap(job -> job.key()).flatMap(EffectiveKey::cupDiameter)
				.filter(cup -> CupFit.diameter(diameters, cup).isEmpty()).isEmpty();
	}

	private static boolean isInherited(EObject key, EObject place) {
		KeySystem system = EcoreUtil2.getContainerOfType(place, KeySystem.class);
		return system != null && EffectiveSystem.of(system.getBase()).key((Key) key).isPresent();
	}
}
