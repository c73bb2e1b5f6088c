package padwright.language.serializer;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeyRemoval;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;
import padwright.model.plan.Fitting;
import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.model.plan.Regulation;
import padwright.model.stock.Stock;
import padwright.model.stock.StockPackage;
import padwright.model.systems.EffectiveSystem;

/** References between the elements of a document, as chance will have it among those that a text can name. */
final class RandomReferences {

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
		List<Key> inherited = keys(system.getBase());
		if (inherited.isEmpty()) {
			system.getChanges().clear();
			system.getRemovals().clear();
		}
		for (KeyChange change : system.getChanges()) {
			change.setKey(oneOf(inherited));
		}
		for (KeyRemoval removal : system.getRemovals()) {
			removal.setKey(oneOf(inherited));
		}
		List<Key> known = keys(system);
		system.getFingerings().forEach(fingering -> connect(fingering, known));
		all(system, Coupling.class).forEach(coupling -> setOrRemove(coupling, known));
	}

	private void connect(Fingering fingering, List<Key> known) {
		known.stream().filter(key -> random.nextInt(3) == 0).forEach(fingering.getKeys()::add);
	}

	private void setOrRemove(Coupling coupling, List<Key> known) {
		if (known.isEmpty()) {
			EcoreUtil.remove(coupling);
		} else {
			coupling.setDriven(oneOf(known));
		}
	}

	private void connect(Stock stock) {
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

	private void connect(Plan plan, Document document) {
		plan.setSystem(oneOf(document.getSystems()));
		plan.setStock(random.nextInt(4) == 0 ? null : oneOf(document.getStocks()));
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
		fitting.setStabiliser(oneOrNone(stock.getStabilisers()));
		fitting.setFilms(oneOrNone(stock.getFilms()));
		fitting.setAdhesive(oneOrNone(stock.getAdhesives()));
	}

	private static List<Key> keys(KeySystem system) {
		return EffectiveSystem.lineage(system).stream().flatMap(each -> each.getKeys().stream()).toList();
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
