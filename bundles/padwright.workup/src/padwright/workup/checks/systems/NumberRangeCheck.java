package padwright.workup.checks.systems;

import java.math.BigDecimal;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** Numbers of a key system that are no lengths are possible ones (bounds are ours, no source). */
public final class NumberRangeCheck extends Check<KeySystem> {

	/** Both ends belong to it. */
	private record Bounds(BigDecimal least, BigDecimal most) {

		static Bounds of(String least, String most) {
			return new Bounds(new BigDecimal(least), new BigDecimal(most));
		}

		boolean hold(BigDecimal number) {
			return number.compareTo(least) >= 0 && number.compareTo(most) <= 0;
		}
	}

	private static final Bounds ANGLE = Bounds.of("-360", "360");
	private static final Bounds CENTS = Bounds.of("-100", "100");
	private static final Map<EStructuralFeature, Bounds> BOUNDS = Map.of(
			KeySystemPackage.Literals.KEY_SYSTEM__PITCH, Bounds.of("200", "1000"),
			KeySystemPackage.Literals.KEY_SYSTEM__TEMPERATURE, Bounds.of("-20", "60"),
			KeySystemPackage.Literals.KEY_SYSTEM__TRANSPOSITION, Bounds.of("-48", "48"),
			KeySystemPackage.Literals.PLACED__AROUND, ANGLE,
			KeySystemPackage.Literals.ROD_FEATURES__AROUND, ANGLE,
			KeySystemPackage.Literals.KEY_FEATURES__SPRING, Bounds.of("1", "1000"),
			KeySystemPackage.Literals.COUPLING__RATIO, Bounds.of("0.05", "20"),
			KeySystemPackage.Literals.FINGERING__CENTS, CENTS,
			KeySystemPackage.Literals.NOTE_REMOVAL__CENTS, CENTS);

	public NumberRangeCheck() {
		super(KeySystem.class);
	}

	@Override
	protected void check(KeySystem system, Findings findings) {
		judge(system, findings);
		system.eAllContents().forEachRemaining(element -> judge(element, findings));
	}

	private static void judge(EObject element, Findings findings) {
		for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
			Bounds bounds = BOUNDS.get(feature);
			if (bounds != null && element.eGet(feature) instanceof BigDecimal number && !bounds.hold(number)) {
				findings.error(IssueCodes.NUMBER_RANGE, Place.of(element, feature),
						Advice.of(IssueCodes.NUMBER_RANGE, number.toPlainString(), bounds.least().toPlainString(),
								bounds.most().toPlainString()));
			}
		}
	}
}
