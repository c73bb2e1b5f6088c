package padwright.exchange.tree;

import java.math.BigDecimal;
import java.util.Set;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Single values as text and back: exact decimals, never binary fractions. */
public final class Values {

	/** As in a text of the language: longer ones are no figures of a flute. */
	private static final int LONGEST = 40;
	/** A thousand million zeros are written in twelve letters with one. */
	private static final Pattern EXPONENT = Pattern.compile(".*[0-9.][eE].*");
	private static final Set<EDataType> WORDS = Set.of(EcorePackage.Literals.ESTRING);

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
		if (!(type instanceof EEnum) && !WORDS.contains(type)
				&& (text.length() > LONGEST || EXPONENT.matcher(text).matches())) {
			throw new IllegalArgumentException("it is too long, or has an exponent");
		}
		Object value;
		try {
			value = EcoreUtil.createFromString(type, text);
		} catch (RuntimeException wrong) {
			throw new IllegalArgumentException("it is no " + type.getName(), wrong);
		}
		if (value == null) {
			throw new IllegalArgumentException("it is no " + type.getName());
		}
		return value;
	}
}
