package padwright.exchange.tree;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;

/** Which features of a class are exchanged, and how: all that the model has, by their own names. */
public final class Features {

	/** Names the kind of a part where several may stand. */
	public static final String KIND = "is";
	/** The packages of the model. */
	public static final List<EPackage> PACKAGES =
			List.of(KeySystemPackage.eINSTANCE, StockPackage.eINSTANCE, PlanPackage.eINSTANCE);

	private Features() {
	}

	/** In the order they are written. */
	public static List<EStructuralFeature> of(EClass type) {
		return type.getEAllStructuralFeatures().stream().filter(feature -> !feature.isDerived()).toList();
	}

	/** Whether it refers to something by name. */
	public static boolean isLink(EStructuralFeature feature) {
		return feature instanceof EReference reference && !reference.isContainment();
	}

	/** Whether it holds parts. */
	public static boolean isPart(EStructuralFeature feature) {
		return feature instanceof EReference reference && reference.isContainment();
	}

	/** Whether parts of a type must tell their kind. */
	public static boolean tellsKind(EClass type) {
		return type.isAbstract();
	}

	/** What may stand where {@code type} is expected. */
	public static List<EClass> kinds(EClass type) {
		return PACKAGES.stream().flatMap(each -> each.getEClassifiers().stream()).filter(EClass.class::isInstance)
				.map(EClass.class::cast).filter(each -> !each.isAbstract() && type.isSuperTypeOf(each)).toList();
	}

	/** Whether it has a value that is always told: an enumeration with a first one that cannot be taken away. */
	static boolean isAlwaysTold(EStructuralFeature feature) {
		EClassifier type = feature.getEType();
		return type instanceof EEnum && !feature.isMany() && !feature.isUnsettable();
	}
}
