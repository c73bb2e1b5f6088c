package padwright.model;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;

/** Lengths as they are written in a document, exact to the nanometre. */
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
		return row(List.of(length), context);
	}

	/** Numbers with one unit behind them all, unless that is the document's; in thou where that is exact. */
	public static String row(List<Length> lengths, EObject context) {
		LengthUnit unit = lengths.stream().allMatch(length -> number(length, LengthUnit.THOU).isPresent())
				? LengthUnit.THOU : LengthUnit.MILLIMETRE;
		return lengths.stream().map(length -> length.in(unit, DECIMALS).toPlainString())
				.collect(Collectors.joining(" "))
				+ (unit == Lengths.documentUnit(context) ? "" : " " + unit.symbol());
	}
}
