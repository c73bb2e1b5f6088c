package padwright.workup.checks.stock;

import java.math.BigDecimal;

import org.eclipse.emf.ecore.EAttribute;

import padwright.model.stock.Levelling;
import padwright.workup.checks.Advice;
import padwright.workup.checks.AttributesOf;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** What a shop levels by is given in per cent that there are. */
public final class LevellingCheck extends Check<Levelling> {

	private static final BigDecimal MOST = BigDecimal.valueOf(100);
	private static final AttributesOf PER_CENT = new AttributesOf(BigDecimal.class);

	public LevellingCheck() {
		super(Levelling.class);
	}

	@Override
	protected void check(Levelling levelling, Findings findings) {
		for (EAttribute attribute : PER_CENT.in(levelling.eClass())) {
			if (levelling.eGet(attribute) instanceof BigDecimal percent && percent.compareTo(MOST) > 0) {
				findings.error(IssueCodes.LEVELLING_PER_CENT, Place.of(levelling, attribute),
						Advice.of(IssueCodes.LEVELLING_PER_CENT, percent.toPlainString()));
			}
		}
	}
}
