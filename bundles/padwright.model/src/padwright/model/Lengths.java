package padwright.model;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.plan.Document;
import padwright.model.plan.ThicknessRow;

/** Exact lengths of what stands in a document, in the unit that holds there. */
public final class Lengths {

	/** A kilometre: so short that the sum of as many lengths as a file can hold stays within 64 bits. */
	public static final Length LONGEST = Length.millimetres("1000000");

	private Lengths() {
	}

	/** The unit of numbers without one in the document that holds {@code element}; thou if it states none. */
	public static LengthUnit documentUnit(EObject element) {
		for (EObject container = element; container != null; container = container.eContainer()) {
			if (container instanceof Document document && document.getUnit() != null) {
				return document.getUnit();
			}
		}
		return LengthUnit.THOU;
	}

	/** {@code unit}, or that of the document around {@code element} if it is null. */
	public static LengthUnit unit(LengthUnit unit, EObject element) {
		return unit == null ? documentUnit(element) : unit;
	}

	/**
	 * The length of a measure that stands in {@code element}, or nothing if it is null or cannot be kept exactly (which
	 * a check reports).
	 */
	public static Optional<Length> of(Measure measure, EObject element) {
		return measure == null ? Optional.empty()
				: exact(measure.number(), unit(measure.unit(), element));
	}

	/** The change of a length that stands in {@code element}, below zero for less; nothing as above. */
	public static Optional<Length> of(SignedMeasure change, EObject element) {
		return change == null ? Optional.empty()
				: of(change.measure(), element).map(length -> change.less() ? Length.ZERO.minus(length) : length);
	}

	/**
	 * {@code number} of {@code unit}, or nothing if it is null, no whole number of nanometres, or beyond
	 * {@link #LONGEST}.
	 */
	public static Optional<Length> exact(BigDecimal number, LengthUnit unit) {
		if (number == null) {
			return Optional.empty();
		}
		try {
			Length length = Length.of(number, unit);
			return length.abs().isLongerThan(LONGEST) ? Optional.empty() : Optional.of(length);
		} catch (ArithmeticException finerThanNanometreOrOutOfRange) {
			return Optional.empty();
		}
	}

	/** The lengths of a row, without those that cannot be kept exactly; empty for null. */
	public static List<Length> of(ThicknessRow row) {
		return row == null ? List.of() : of(row.getValues(), unit(row.getUnit(), row));
	}

	/** The lengths of numbers of one unit, without those that cannot be kept exactly. */
	public static List<Length> of(List<BigDecimal> numbers, LengthUnit unit) {
		List<Length> lengths = new ArrayList<>(numbers.size());
		for (BigDecimal number : numbers) {
			exact(number, unit).ifPresent(lengths::add);
		}
		return Collections.unmodifiableList(lengths);
	}
}
