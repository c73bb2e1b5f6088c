package padwright.exchange.tree;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;

import padwright.engine.length.LengthUnit;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;

/** Single values as text and back: exact decimals, never binary fractions. */
public final class Values {

	/** As in a text of the language: longer ones are no figures of a flute. */
	private static final int LONGEST = 40;
	/** A thousand million zeros are written in twelve letters with one. */
	private static final Pattern EXPONENT = Pattern.compile(".*[0-9.][eE].*");
	private static final Set<EDataType> TEXTS = Set.of(EcorePackage.Literals.ESTRING);
	private static final Map<EDataType, String> IN_WORDS = Map.of(EcorePackage.Literals.EBIG_DECIMAL, "decimal number",
			EcorePackage.Literals.EINT, "whole number", EcorePackage.Literals.EBOOLEAN, "true or false",
			KeySystemPackage.Literals.MEASURE, "length such as 14.3 mm",
			KeySystemPackage.Literals.LENGTH_UNIT, "unit of length: " + String.join(", ", LengthUnit.symbols()),
			KeySystemPackage.Literals.CLOCK_HOUR, "hour from 1 to 12.5 in half hours",
			StockPackage.Literals.RANGE, "range such as 13..16", KeySystemPackage.Literals.DATE, "day such as 2026-03-02",
			PlanPackage.Literals.FEELER_READING, "reading: a dot or a number");

	private Values() {
	}

	/** As it is written. */
	static String text(EDataType type, Object value) {
		return value instanceof BigDecimal number ? number.toPlainString() : EcoreUtil.convertToString(type, value);
	}

	/**
	 * What {@code text} says.
	 *
	 * @throws IllegalArgumentException if it says nothing of this type
	 */
	public static Object value(EDataType type, String text) {
		if (!(type instanceof EEnum) && !TEXTS.contains(type)
				&& (text.length() > LONGEST || EXPONENT.matcher(text).matches())) {
			throw new IllegalArgumentException("it is too long, or has an exponent");
		}
		Object value;
		try {
			value = EcoreUtil.createFromString(type, text);
		} catch (RuntimeException wrong) {
			throw new IllegalArgumentException("it is no " + words(type), wrong);
		}
		if (value == null) {
			throw new IllegalArgumentException("it is no " + words(type));
		}
		return value;
	}

	private static String words(EDataType type) {
		return IN_WORDS.getOrDefault(type, type.getName());
	}
}
