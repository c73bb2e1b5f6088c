package padwright.language.serializer;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import padwright.model.keysystem.Change;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.HoleFeatures;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Removal;
import padwright.model.plan.Document;
import padwright.model.plan.Fitting;
import padwright.model.plan.Job;
import padwright.model.plan.JobEntry;
import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Regulation;
import padwright.model.plan.Tenon;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;
import padwright.model.systems.EffectiveSystem;

/** References between the elements of a document, as chance will have it among those that a text can name. */
final class RandomReferences {

	private static final Set<EReference> MANDATORY = Set.of(KeySystemPackage.Literals.COUPLING__DRIVEN,
			KeySystemPackage.Literals.BEARING__KEY, KeySystemPackage.Literals.PRESS__TOUCH,
			PlanPackage.Literals.TENON__JOINT);

	private final Random random;

	RandomReferences(Random random) {
		this.random = random;
	}

	void connect(Document document) {
		for (int index = 1; index < document.getSystems().size(); index++) {
			KeySystem earlier = document.getSystems().get(random.nextInt(index));
			document.getSystems().get(index).setBase(earlier);
		}
		document.getSystems().forEach(this::connect);
		document.getStocks().forEach(this::connect);
		for (int index = 1; index < document.getStocks().size(); index++) {
			document.getStocks().get(index).getShared().add(document.getStocks().get(random.nextInt(index)));
		}
		document.getPlans().forEach(plan -> connect(plan, document));
	}

	private void connect(KeySystem system) {
		system.getChanges().removeIf(change -> !name(change, system.getBase()));
		system.getRemovals().removeIf(removal -> !name(removal, system.getBase()));
		for (EObject element : all(system, EObject.class)) {
			connect(element, system);
		}
	}

	/** Lets a change or removal name something inherited, if there is such a thing. */
	private boolean name(EObject element, KeySystem base) {
		for (EReference target : element.eClass().getEReferences()) {
			List<EObject> inherited = parts(base, target.getEReferenceType());
			if (inherited.isEmpty()) {
				return false;
			}
			element.eSet(target, oneOf(inherited));
		}
		return true;
	}

	private void connect(EObject element, KeySystem system) {
		boolean names = element instanceof Change || element instanceof Removal;
		for (EReference link : element.eClass().getEAllReferences()) {
			if (!link.isContainment() && !(names && element.eClass().getEReferences().contains(link))) {
				connect(element, link, parts(system, link.getEReferenceType()));
			}
		}
		if (element instanceof KeyFeatures key && key.getHole() != null) {
			key.setOver(null);
		}
		if (element instanceof Coupling coupling && coupling.getCondition() == null) {
			coupling.setUnpressed(false);
		}
	}

	@SuppressWarnings("unchecked")
	private void connect(EObject element, EReference link, List<EObject> known) {
		if (MANDATORY.contains(link)) {
			if (known.isEmpty()) {
				EcoreUtil.remove(element);
			} else {
				element.eSet(link, oneOf(known));
			}
		} else if (!link.isMany()) {
			element.eSet(link, oneOrNone(known));
		} else if (!isUntouched(element)) {
			known.stream().filter(one -> random.nextInt(3) == 0).forEach(((List<EObject>) element.eGet(link))::add);
		}
	}

	private static boolean isUntouched(EObject element) {
		return element instanceof KeyFeatures key && key.isUntouched()
				|| element instanceof HoleFeatures hole && hole.isUntouched();
	}

	private void connect(Stock stock) {
		stock.getPads().forEach(pad -> pad.setKind(oneOrNone(stock.getKinds())));
		for (EObject element : all(stock, EObject.class)) {
			for (EReference reference : element.eClass().getEAllReferences()) {
				boolean optional = element.eClass() == StockPackage.Literals.FEELER;
				if (reference.getEReferenceType() == StockPackage.Literals.MATERIAL && !reference.isContainment()
						&& (!optional || random.nextBoolean())) {
					element.eSet(reference, oneOf(stock.getMaterials()));
				}
			}
		}
	}

	/** A line about keys or a joint is left out where the system has none. */
	@SuppressWarnings("unchecked")
	private void connect(JobEntry entry, Plan plan) {
		for (EReference link : entry.eClass().getEAllReferences()) {
			if (link.isContainment()) {
				continue;
			}
			List<EObject> known = parts(plan.getSystem(), link.getEReferenceType());
			if (known.isEmpty()) {
				EcoreUtil.remove(entry);
			} else if (link.isMany()) {
				((List<EObject>) entry.eGet(link)).add(oneOf(known));
			} else {
				entry.eSet(link, oneOf(known));
			}
		}
	}

	private void connect(Plan plan, Document document) {
		plan.setSystem(oneOf(document.getSystems()));
		plan.setStock(random.nextInt(4) == 0 ? null : oneOf(document.getStocks()));
		List<EObject> joints = parts(plan.getSystem(), KeySystemPackage.Literals.JOINT);
		all(plan, Job.class).forEach(job -> job.setProcess(plan.getStock() == null ? null
				: oneOrNone(plan.getStock().getProcesses())));
		all(plan, JobEntry.class).forEach(entry -> connect(entry, plan));
		all(plan, Tenon.class).forEach(tenon -> connect(tenon, PlanPackage.Literals.TENON__JOINT, joints));
		List<Key> known = keys(plan.getSystem());
		if (known.isEmpty()) {
			plan.getKeys().clear();
			plan.getRegulations().clear();
		}
		for (KeyService service : plan.getKeys()) {
			service.setKey(oneOf(known));
		}
		for (Regulation regulation : plan.getRegulations()) {
			regulation.setDriver(oneOf(known));
			regulation.setDriven(oneOf(known));
		}
		all(plan, Fitting.class).forEach(fitting -> connect(fitting, oneOf(document.getStocks())));
	}

	private void connect(Fitting fitting, Stock stock) {
		fitting.setPad(oneOf(stock.getPads()));
		fitting.setBacking(oneOrNone(stock.getBackings()));
		fitting.setFilms(oneOrNone(stock.getFilms()));
		fitting.setAdhesive(oneOrNone(stock.getAdhesives()));
	}

	private static List<Key> keys(KeySystem system) {
		return EffectiveSystem.lineage(system).stream().flatMap(each -> each.getKeys().stream()).toList();
	}

	private static List<EObject> parts(KeySystem system, EClass type) {
		return EffectiveSystem.lineage(system).stream().flatMap(each -> each.eContents().stream())
				.filter(part -> part.eClass() == type).toList();
	}

	private static <T extends EObject> List<T> all(EObject root, Class<T> type) {
		List<T> found = new ArrayList<>();
		root.eAllContents().forEachRemaining(element -> {
			if (type.isInstance(element)) {
				found.add(type.cast(element));
			}
		});
		return found;
	}

	private <T> T oneOf(List<T> choices) {
		return choices.get(random.nextInt(choices.size()));
	}

	private <T> T oneOrNone(List<T> choices) {
		return choices.isEmpty() || random.nextInt(3) == 0 ? null : oneOf(choices);
	}
}
