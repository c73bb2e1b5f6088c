package padwright.language.scoping;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.naming.QualifiedName;
import org.eclipse.xtext.scoping.IScope;
import org.eclipse.xtext.scoping.Scopes;
import org.eclipse.xtext.scoping.impl.MapBasedScope;
import org.eclipse.xtext.util.IResourceScopeCache;
import org.eclipse.xtext.util.Tuples;

import com.google.inject.Inject;

import padwright.model.Resolved;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.job.Processes;
import padwright.workup.rules.PadKinds;

/**
 * What a name in a document may refer to. Keys, touches, holes, joints and rods are those of the system at hand and of all
 * that it is based on, the nearest of one name first, but those of its bases before its own where one is changed or
 * removed; articles are those of the plan's stock by name, and of every stock by qualified name; pad kinds those of the
 * stock at hand and of those that it is kept with; systems, stocks and plans are those of the whole shop.
 */
public class PadwrightScopeProvider extends AbstractPadwrightScopeProvider {

	private static final Map<EReference, Function<Stock, Collection<? extends Titled>>> ARTICLES = Map.of(
			PlanPackage.Literals.FITTING__PAD, Stock::getPads,
			PlanPackage.Literals.FITTING__BACKING, Stock::getBackings,
			PlanPackage.Literals.FITTING__FILMS, Stock::getFilms,
			PlanPackage.Literals.FITTING__ADHESIVE, Stock::getAdhesives,
			PlanPackage.Literals.JOB__PROCESS, Processes::of);

	private static final Map<EClass, Function<KeySystem, List<? extends Titled>>> PARTS = Map.of(
			KeySystemPackage.Literals.JOINT, KeySystem::getJoints,
			KeySystemPackage.Literals.TOUCH, KeySystem::getTouches,
			KeySystemPackage.Literals.HOLE, KeySystem::getHoles,
			KeySystemPackage.Literals.KEY, KeySystem::getKeys,
			KeySystemPackage.Literals.ROD, KeySystem::getRods);

	@Inject
	private IResourceScopeCache cache;

	@Override
	public IScope getScope(EObject context, EReference reference) {
		EClass type = reference.getEReferenceType();
		if (PARTS.containsKey(type)) {
			Plan plan = EcoreUtil2.getContainerOfType(context, Plan.class);
			return plan == null ? ofSystem(EcoreUtil2.getContainerOfType(context, KeySystem.class), reference)
					: planned(plan, type);
		}
		if (type == StockPackage.Literals.PAD_KIND) {
			return named(PadKinds.of(EcoreUtil2.getContainerOfType(context, Stock.class)), IScope.NULLSCOPE);
		}
		if (reference.getEReferenceType() == StockPackage.Literals.MATERIAL) {
			Stock stock = EcoreUtil2.getContainerOfType(context, Stock.class);
			return named(stock == null ? List.of() : stock.getMaterials(), IScope.NULLSCOPE);
		}
		IScope shop = super.getScope(context, reference);
		return ARTICLES.containsKey(reference) ? named(articles(context, reference), shop) : shop;
	}

	/** What a change or removal names is inherited; its own only where nothing of the name is. */
	private static IScope ofSystem(KeySystem system, EReference reference) {
		IScope all = named(parts(system, reference.getEReferenceType()), IScope.NULLSCOPE);
		EClass owner = reference.getEContainingClass();
		return KeySystemPackage.Literals.CHANGE.isSuperTypeOf(owner)
				|| KeySystemPackage.Literals.REMOVAL.isSuperTypeOf(owner)
						? named(parts(system.getBase(), reference.getEReferenceType()), all) : all;
	}

	/** A plan names keys in every row, all of one system, so that they are sought out once. */
	private IScope planned(Plan plan, EClass type) {
		return plan.eResource() == null ? partsOf(plan, type)
				: cache.get(Tuples.pair(plan, type), plan.eResource(), () -> partsOf(plan, type));
	}

	private static IScope partsOf(Plan plan, EClass type) {
		return MapBasedScope.createScope(IScope.NULLSCOPE,
				named(parts(plan.getSystem(), type), IScope.NULLSCOPE).getAllElements());
	}

	private static IScope named(Collection<? extends Titled> elements, IScope outer) {
		return Scopes.scopeFor(elements,
				titled -> titled.getName() == null ? null : QualifiedName.create(titled.getName()), outer);
	}

	private static Collection<? extends Titled> articles(EObject context, EReference reference) {
		Plan plan = EcoreUtil2.getContainerOfType(context, Plan.class);
		return Resolved.of(plan.getStock()).<Collection<? extends Titled>>map(ARTICLES.get(reference)::apply)
				.orElse(List.of());
	}

	/** Removed ones too: a reference to one is better told so than that there is no such thing. */
	private static Collection<? extends Titled> parts(KeySystem system, EClass type) {
		List<Titled> nearestLast = new ArrayList<>();
		EffectiveSystem.lineage(system).forEach(each -> nearestLast.addAll(PARTS.get(type).apply(each)));
		Collections.reverse(nearestLast);
		return nearestLast;
	}
}
