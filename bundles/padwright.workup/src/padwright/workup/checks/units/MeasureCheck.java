package padwright.workup.checks.units;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.Measure;
import padwright.model.SignedMeasure;
import padwright.workup.checks.Advice;
import padwright.workup.checks.AttributesOf;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.words.Phrase;

/** A single length is one that the thing can have, so that thou and millimetres are not mixed up. */
public final class MeasureCheck extends Check<EObject> {

	private static final AttributesOf MEASURES = new AttributesOf(Measure.class);
	private static final AttributesOf CHANGES = new AttributesOf(SignedMeasure.class);

	public MeasureCheck() {
		super(EObject.class);
	}

	@Override
	protected void check(EObject element, Findings findings) {
		for (EAttribute attribute : MEASURES.in(element.eClass())) {
			if (element.eGet(attribute) instanceof Measure measure) {
				judge(measure, element, attribute, findings);
			}
		}
		for (EAttribute attribute : CHANGES.in(element.eClass())) {
			if (element.eGet(attribute) instanceof SignedMeasure change) {
				judge(change.measure(), element, attribute, findings);
			}
		}
	}

	private static void judge(Measure measure, EObject element, EAttribute attribute, Findings findings) {
		LengthUnit unit = Lengths.unit(measure.unit(), element);
		judge(measure.number(), unit, PlausibleLengths.of(attribute), Place.of(element, attribute), findings);
	}

	static void judge(BigDecimal number, LengthUnit unit, Optional<Plausible> plausible, Place place,
			Findings findings) {
		Optional<Length> length = Lengths.exact(number, unit);
		if (length.isEmpty()) {
			findings.error(IssueCodes.TOO_FINE, place, Advice.of(IssueCodes.TOO_FINE, written(number, unit)));
		} else {
			plausible.filter(bounds -> !bounds.holds(length.get()))
					.ifPresent(bounds -> suspect(number, unit, bounds, place, findings));
		}
	}

	private static void suspect(BigDecimal number, LengthUnit unit, Plausible bounds, Place place,
			Findings findings) {
		String meant = meantUnit(bounds.unitsFor(number)).map(other -> written(number, other)).orElse("");
		Phrase cure = meant.isEmpty() ? Phrase.of("unit-suspect.measure") : Phrase.of("unit-suspect.meant", meant);
		findings.error(IssueCodes.UNIT_SUSPECT, place,
				new Advice(Phrase.of("unit-suspect.what", written(number, unit), bounds.name()), bounds.why(), cure),
				meant.isEmpty() ? new String[0] : new String[] { meant });
	}

	/** The only unit that makes sense; micrometres, in which hardly anybody measures a flute, only if no other does. */
	private static Optional<LengthUnit> meantUnit(List<LengthUnit> plausible) {
		List<LengthUnit> usual = plausible.stream().filter(unit -> unit != LengthUnit.MICROMETRE).toList();
		List<LengthUnit> units = usual.isEmpty() ? plausible : usual;
		return units.size() == 1 ? Optional.of(units.get(0)) : Optional.empty();
	}

	private static String written(BigDecimal number, LengthUnit unit) {
		return number.toPlainString() + " " + unit.symbol();
	}
}
