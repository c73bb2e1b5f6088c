package padwright.workup.checks.stock;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import padwright.model.Range;
import padwright.workup.checks.Advice;
import padwright.workup.checks.AttributesOf;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A range runs from the lesser number to the greater. */
public final class RangeCheck extends Check<EObject> {

	private static final AttributesOf RANGES = new AttributesOf(Range.class);

	public RangeCheck() {
		super(EObject.class);
	}

	@Override
	protected void check(EObject element, Findings findings) {
		for (EAttribute attribute : RANGES.in(element.eClass())) {
			if (element.eGet(attribute) instanceof Range range && range.isEmpty()) {
				findings.error(IssueCodes.RANGE_EMPTY, Place.of(element, attribute),
						Advice.of(IssueCodes.RANGE_EMPTY, range,
								range.high().toPlainString() + ".." + range.low().toPlainString()));
			}
		}
	}
}
