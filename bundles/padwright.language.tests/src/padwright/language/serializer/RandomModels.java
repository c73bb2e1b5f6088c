package padwright.language.serializer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import padwright.model.keysystem.Adjuster;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.PadCup;
import padwright.model.keysystem.Titled;
import padwright.model.plan.Document;
import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.model.stock.Pad;
import padwright.model.stock.StockPackage;

/** Builds documents in code, with any feature of any element set or not, as chance will have it. */
final class RandomModels {

	/** Said of a change to take something away, and what then cannot be said. */
	private static final Map<EStructuralFeature, EStructuralFeature> NOTHINGS = Map.of(
			KeySystemPackage.Literals.KEY_FEATURES__UNTOUCHED, KeySystemPackage.Literals.KEY_FEATURES__TOUCHES,
			KeySystemPackage.Literals.KEY_FEATURES__CLOSES_NOTHING, KeySystemPackage.Literals.KEY_FEATURES__CLOSES,
			KeySystemPackage.Literals.KEY_FEATURES__OPENS_NOTHING, KeySystemPackage.Literals.KEY_FEATURES__OPENS,
			KeySystemPackage.Literals.KEY_FEATURES__HOLDS_NOTHING, KeySystemPackage.Literals.KEY_FEATURES__HOLDS,
			KeySystemPackage.Literals.HOLE_FEATURES__UNTOUCHED, KeySystemPackage.Literals.HOLE_FEATURES__TOUCHES);

	/** What the grammar does not let be left out. */
	private static final Set<String> MANDATORY = Set.of("name", "note", "key", "driven", "driver", "hour", "reference",
			"diameter", "humidity", "role", "size", "sizes", "text", "severity", "condition", "left",
			"right", "operand", "property", "operator", "value", "number", "system", "pad", "values", "readings",
			"from", "to", "light", "side", "weight", "fit", "systems", "stocks", "plans", "materials", "pads");
	private static final Map<EClass, Set<String>> MANDATORY_IN = Map.ofEntries(
			Map.entry(KeySystemPackage.Literals.ADJUSTER, Set.of("kind")),
			Map.entry(StockPackage.Literals.LAYER, Set.of("material", "thickness")),
			Map.entry(StockPackage.Literals.CLIMATE, Set.of("temperature")),
			Map.entry(StockPackage.Literals.BACKING, Set.of("material", "thickness")),
			Map.entry(StockPackage.Literals.FILM_SET, Set.of("material", "thicknesses")),
			Map.entry(StockPackage.Literals.FEELER, Set.of("thickness")),
			Map.entry(KeySystemPackage.Literals.EMBOUCHURE, Set.of("length", "width")),
			Map.entry(KeySystemPackage.Literals.REVISION, Set.of("date", "changed")),
			Map.entry(PlanPackage.Literals.PIECE, Set.of("thickness")),
			Map.entry(StockPackage.Literals.PAPER_WORDS, Set.of("paper", "lines")),
			Map.entry(PlanPackage.Literals.TENON, Set.of("joint")),
			Map.entry(PlanPackage.Literals.PLAY_TEST, Set.of("phase", "notes", "verdict")),
			Map.entry(PlanPackage.Literals.TESTER_READING, Set.of("phase", "leak")),
			Map.entry(PlanPackage.Literals.PHOTOGRAPH, Set.of("path")),
			Map.entry(PlanPackage.Literals.MECHANISM_NOTE, Set.of("part")),
			Map.entry(PlanPackage.Literals.TENON_NOTE, Set.of("work")),
			Map.entry(PlanPackage.Literals.RIM_NOTE, Set.of("state")),
			Map.entry(PlanPackage.Literals.CUP_NOTE, Set.of("place")),
			Map.entry(PlanPackage.Literals.PAD_NOTE, Set.of("work")),
			Map.entry(PlanPackage.Literals.TREATMENT, Set.of("kind")),
			Map.entry(PlanPackage.Literals.WAITING, Set.of("reason")),
			Map.entry(PlanPackage.Literals.WARRANTY_VISIT, Set.of("service")),
			Map.entry(PlanPackage.Literals.MONEY_ITEM, Set.of("price")),
			Map.entry(PlanPackage.Literals.AGREEMENT, Set.of("option")),
			Map.entry(PlanPackage.Literals.DEPOSIT, Set.of("amount")));
	private static final int DEEPEST_CONDITION = 4;

	private final Random random;
	private final RandomValues values;
	private final Set<EStructuralFeature> used;

	/** @param used receives every feature that is set */
	RandomModels(long seed, Set<EStructuralFeature> used) {
		this.random = new Random(seed);
		this.values = new RandomValues(random);
		this.used = used;
	}

	Document document() {
		Document document = (Document) create(PlanPackage.Literals.DOCUMENT, 0);
		new RandomReferences(random).connect(document);
		document.eAllContents().forEachRemaining(this::noteUse);
		noteUse(document);
		return document;
	}

	private void noteUse(EObject element) {
		element.eClass().getEAllStructuralFeatures().stream().filter(element::eIsSet).forEach(used::add);
	}

	private EObject create(EClass type, int depth) {
		EObject element = EcoreUtil.create(type);
		for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
			boolean mandatory = isMandatory(type, feature);
			if (mandatory || random.nextInt(3) > 0) {
				fill(element, feature, mandatory, depth);
			}
		}
		makeConsistent(element);
		return element;
	}

	private static boolean isMandatory(EClass type, EStructuralFeature feature) {
		boolean optionalName = type == PlanPackage.Literals.PLAYER;
		return MANDATORY.contains(feature.getName()) && !optionalName
				|| MANDATORY_IN.getOrDefault(type, Set.of()).contains(feature.getName());
	}

	@SuppressWarnings("unchecked")
	private void fill(EObject element, EStructuralFeature feature, boolean mandatory, int depth) {
		if (!feature.isMany()) {
			Object value = value(element, feature, depth);
			if (value != null) {
				element.eSet(feature, value);
			}
			return;
		}
		int count = (mandatory ? 1 : 0) + random.nextInt(3);
		for (int index = 0; index < count; index++) {
			Object value = value(element, feature, depth);
			if (value != null) {
				((List<Object>) element.eGet(feature)).add(value);
			}
		}
	}

	private Object value(EObject element, EStructuralFeature feature, int depth) {
		if (feature instanceof EAttribute attribute) {
			return values.of(element, attribute);
		}
		EReference reference = (EReference) feature;
		return reference.isContainment() ? create(concrete(reference.getEReferenceType(), depth), depth + 1) : null;
	}

	private EClass concrete(EClass type, int depth) {
		List<EClass> concrete = new ArrayList<>();
		type.getEPackage().getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
				.filter(each -> !each.isAbstract() && type.isSuperTypeOf(each)).forEach(concrete::add);
		boolean deep = type == StockPackage.Literals.EXPRESSION && depth > DEEPEST_CONDITION;
		return deep ? StockPackage.Literals.COMPARISON : concrete.get(random.nextInt(concrete.size()));
	}

	/** What the grammar does not let be said together, or alone. */
	private static void makeConsistent(EObject element) {
		if (element instanceof Pad pad && pad.getThickness() == null) {
			pad.setTolerance(null);
		}
		if (element instanceof KeySystem system && system.getPitch() == null) {
			system.setTemperature(null);
		}
		if (element instanceof Plan plan && plan.getBed() == null) {
			plan.setBedUnit(null);
		}
		if (element instanceof Plan plan && plan.getHours().isEmpty()) {
			plan.setGraded(false);
		}
		if (element instanceof Adjuster adjuster && adjuster.getThread() != null) {
			adjuster.setPitch(null);
		}
		takeNothingBesideSomething(element);
		if (element instanceof Titled && !(element instanceof KeySystem)) {
			NOTHINGS.keySet().stream().filter(element.eClass().getEAllStructuralFeatures()::contains)
					.forEach(element::eUnset);
		}
		if (element instanceof PadCup cup && !cup.isSetStyle()) {
			cup.setPerforation(null);
		}
		if (element instanceof KeyService service && service.getDelivered() != null) {
			service.getDelivered().setLevel(false);
			service.getDelivered().getPieces().clear();
			service.getDelivered().getRemoved().clear();
			service.getDelivered().setFull(null);
		}
		if (element instanceof Round round && round.isLevel()) {
			round.getPieces().clear();
		}
	}

	private static void takeNothingBesideSomething(EObject element) {
		NOTHINGS.forEach((nothing, something) -> {
			if (element.eClass().getEAllStructuralFeatures().contains(nothing)
					&& Boolean.TRUE.equals(element.eGet(nothing))) {
				element.eUnset(something);
			}
		});
	}

	/** Every feature of every class of elements. */
	static Set<EStructuralFeature> allFeatures() {
		Set<EStructuralFeature> all = new HashSet<>();
		for (var each : List.of(KeySystemPackage.eINSTANCE, StockPackage.eINSTANCE, PlanPackage.eINSTANCE)) {
			each.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
					.forEach(type -> all.addAll(type.getEAllStructuralFeatures()));
		}
		return Collections.unmodifiableSet(all);
	}
}
