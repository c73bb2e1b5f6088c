package padwright.language.merge;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.model.keysystem.Change;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Removal;
import padwright.model.keysystem.Titled;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;

/** By what an element is known again in another copy of its document: as written, so that no link is followed. */
final class Identity {

	private static final Map<EClass, List<EStructuralFeature>> FEATURES = Map.ofEntries(
			by(KeySystemPackage.Literals.FINGERING, KeySystemPackage.Literals.FINGERING__NOTE,
					KeySystemPackage.Literals.FINGERING__CENTS, KeySystemPackage.Literals.FINGERING__LABEL),
			by(KeySystemPackage.Literals.NOTE_REMOVAL, KeySystemPackage.Literals.NOTE_REMOVAL__NOTE,
					KeySystemPackage.Literals.NOTE_REMOVAL__CENTS, KeySystemPackage.Literals.NOTE_REMOVAL__LABEL),
			by(KeySystemPackage.Literals.REVISION, KeySystemPackage.Literals.REVISION__DATE,
					KeySystemPackage.Literals.REVISION__CHANGED),
			by(StockPackage.Literals.LAYER, StockPackage.Literals.LAYER__ROLE),
			by(StockPackage.Literals.RULE, StockPackage.Literals.RULE__TEXT),
			by(StockPackage.Literals.PREFERENCE, StockPackage.Literals.PREFERENCE__TEXT),
			by(PlanPackage.Literals.TENON, PlanPackage.Literals.TENON__JOINT),
			by(PlanPackage.Literals.KEY_SERVICE, PlanPackage.Literals.KEY_SERVICE__KEY),
			by(PlanPackage.Literals.REGULATION, PlanPackage.Literals.REGULATION__DRIVER,
					PlanPackage.Literals.REGULATION__DRIVEN));

	private Identity() {
	}

	private static Map.Entry<EClass, List<EStructuralFeature>> by(EClass kind, EStructuralFeature... features) {
		return Map.entry(kind, List.of(features));
	}

	static String kind(EObject element) {
		return element.eClass().getName();
	}

	static String of(EObject element) {
		return kind(element) + features(element).stream().map(feature -> " " + written(element, feature))
				.collect(Collectors.joining());
	}

	private static List<EStructuralFeature> features(EObject element) {
		List<EStructuralFeature> own = FEATURES.get(element.eClass());
		if (own != null) {
			return own;
		}
		if (element instanceof Change || element instanceof Removal) {
			return List.copyOf(element.eClass().getEReferences());
		}
		return element instanceof Titled ? List.of(KeySystemPackage.Literals.TITLED__NAME) : List.of();
	}

	private static String written(EObject element, EStructuralFeature feature) {
		return NodeModelUtils.findNodesForFeature(element, feature).stream().map(NodeModelUtils::getTokenText)
				.collect(Collectors.joining(" "));
	}
}
