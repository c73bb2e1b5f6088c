package padwright.language.ide.facts;

import java.math.BigDecimal;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;

/** Lengths as they are written in a document. */
public final class LengthText {

	/** A nanometre is the sixth decimal of a millimetre; what needs more decimals in another unit is not written so. */
	private static final int DECIMALS = 6;

	private LengthText() {
	}

	/** The number alone, where it says the length exactly. */
	public static Optional<String> number(Length length, LengthUnit unit) {
		BigDecimal number = length.in(unit, DECIMALS);
		return Lengths.exact(number, unit).filter(length::equals).map(exact -> number.toPlainString());
	}

	/** With its unit, unless that is the document's; in thou where that is exact, else in millimetres. */
	public static String measure(Length length, EObject context) {
		LengthUnit unit = number(length, LengthUnit.THOU).isPresent() ? LengthUnit.THOU : LengthUnit.MILLIMETRE;
		return length.in(unit, DECIMALS).toPlainString()
				+ (unit == Lengths.documentUnit(context) ? "" : " " + unit.symbol());
	}
}
