package padwright.views.layout;

import org.eclipse.emf.ecore.EReference;

import padwright.model.keysystem.KeySystemPackage;

/** What the model calls the couplings that can be drawn. */
final class LinkFeatures {

	private LinkFeatures() {
	}

	static EReference of(LayoutLink.Kind kind) {
		return switch (kind) {
		case CLOSES -> KeySystemPackage.Literals.KEY_FEATURES__CLOSES;
		case OPENS -> KeySystemPackage.Literals.KEY_FEATURES__OPENS;
		case HOLDS -> KeySystemPackage.Literals.KEY_FEATURES__HOLDS;
		case PRESSES -> throw new IllegalArgumentException("a touch is no coupling");
		};
	}
}
