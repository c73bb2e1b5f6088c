package padwright.language.scoping;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

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

import padwright.model.Present;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;
import padwright.model.systems.EffectiveSystem;

/**
 * What a name in a document may refer to. Keys are those of the system at hand and of all it extends, the nearest of
 * one name first, but those of the extended ones before its own where a key is changed or removed; articles are those
 * of the plan's stock by name, and of every stock by qualified name; systems, stocks and plans are those of the whole
 * shop.
 */
public class PadwrightScopeProvider extends AbstractPadwrightScopeProvider {

	private static final Map<EReference, Function<Stock, Collection<? extends Titled>>> ARTICLES = Map.of(
			PlanPackage.Literals.FITTING__PAD, Stock::getPads,
			PlanPackage.Literals.FITTING__STABILISER, Stock::getStabilisers,
			PlanPackage.Literals.FITTING__FILMS, Stock::getFilms,
			PlanPackage.Literals.FITTING__ADHESIVE, Stock::getAdhesives);

	private static final Set<EReference> OF_INHERITED_KEYS = Set.of(KeySystemPackage.Literals.KEY_CHANGE__KEY,
			KeySystemPackage.Literals.KEY_REMOVAL__KEY);

	private static final String KEYS = "keys";

	@Inject
	private IResourceScopeCache cache;

	@Override
	public IScope getScope(EObject context, EReference reference) {
		if (OF_INHERITED_KEYS.contains(reference)) {
			return named(inheritedKeys(context), named(keys(context), IScope.NULLSCOPE));
		}
		if (reference.getEReferenceType() == KeySystemPackage.Literals.KEY) {
			Plan plan = EcoreUtil2.getContainerOfType(context, Plan.class);
			return plan == null ? named(keys(context), IScope.NULLSCOPE) : planned(plan);
		}
		if (reference.getEReferenceType() == StockPackage.Literals.MATERIAL) {
			Stock stock = EcoreUtil2.getContainerOfType(context, Stock.class);
			return named(stock == null ? List.of() : stock.getMaterials(), IScope.NULLSCOPE);
		}
		IScope shop = super.getScope(context, reference);
		return ARTICLES.containsKey(reference) ? named(articles(context, reference), shop) : shop;
	}

	/** A plan names keys in every row, all of one system, so that they are sought out once. */
	private IScope planned(Plan plan) {
		return plan.eResource() == null ? keysOf(plan)
				: cache.get(Tuples.pair(plan, KEYS), plan.eResource(), () -> keysOf(plan));
	}

	private static IScope keysOf(Plan plan) {
		return MapBasedScope.createScope(IScope.NULLSCOPE, named(keys(plan.getSystem()), IScope.NULLSCOPE).getAllElements());
	}

	private static IScope named(Collection<? extends Titled> elements, IScope outer) {
		return Scopes.scopeFor(elements,
				titled -> titled.getName() == null ? null : QualifiedName.create(titled.getName()), outer);
	}

	private static Collection<? extends Titled> articles(EObject context, EReference reference) {
		Plan plan = EcoreUtil2.getContainerOfType(context, Plan.class);
		return Present.of(plan.getStock()).<Collection<? extends Titled>>map(ARTICLES.get(reference)::apply)
				.orElse(List.of());
	}

	private static Collection<Key> inheritedKeys(EObject context) {
		return keys(EcoreUtil2.getContainerOfType(context, KeySystem.class).getBase());
	}

	private static Collection<Key> keys(EObject context) {
		return keys(EcoreUtil2.getContainerOfType(context, KeySystem.class));
	}

	/** Removed keys too: a reference to one is better told so than that there is no such key. */
	private static Collection<Key> keys(KeySystem system) {
		List<Key> nearestLast = new ArrayList<>();
		EffectiveSystem.lineage(system).forEach(each -> nearestLast.addAll(each.getKeys()));
		Collections.reverse(nearestLast);
		return nearestLast;
	}
}
