package padwright.language.merge;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Titled;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;

/** By what an element is known again in another copy of its document: as written, so that no link is followed. */
final class Identity {

	private static final Map<EClass, List<EStructuralFeature>> FEATURES = Map.of(
			KeySystemPackage.Literals.KEY_CHANGE, List.of(KeySystemPackage.Literals.KEY_CHANGE__KEY),
			KeySystemPackage.Literals.KEY_REMOVAL, List.of(KeySystemPackage.Literals.KEY_REMOVAL__KEY),
			KeySystemPackage.Literals.FINGERING,
			List.of(KeySystemPackage.Literals.FINGERING__NOTE, KeySystemPackage.Literals.FINGERING__LABEL),
			StockPackage.Literals.LAYER, List.of(StockPackage.Literals.LAYER__ROLE),
			StockPackage.Literals.RULE, List.of(StockPackage.Literals.RULE__TEXT),
			PlanPackage.Literals.KEY_SERVICE, List.of(PlanPackage.Literals.KEY_SERVICE__KEY),
			PlanPackage.Literals.REGULATION,
			List.of(PlanPackage.Literals.REGULATION__DRIVER, PlanPackage.Literals.REGULATION__DRIVEN));

	private Identity() {
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
		return element instanceof Titled ? List.of(KeySystemPackage.Literals.TITLED__NAME) : List.of();
	}

	private static String written(EObject element, EStructuralFeature feature) {
		return NodeModelUtils.findNodesForFeature(element, feature).stream().map(NodeModelUtils::getTokenText)
				.collect(Collectors.joining(" "));
	}
}
