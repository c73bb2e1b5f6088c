package padwright.language.conversion;

import java.time.DateTimeException;
import java.util.NoSuchElementException;
import java.util.function.Function;

import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.nodemodel.INode;

import padwright.language.messages.Messages;

/**
 * Converts by a pair of functions; what cannot be converted becomes an error at its place.
 *
 * @param <T> the type of the value
 */
final class TextConverter<T> implements IValueConverter<T> {

	/** Longer ones are no figures of a flute, and take long to reckon with. */
	private static final int LONGEST = 40;

	/** The message of a cause would be shown instead of ours. */
	private static final Exception NO_CAUSE = null;

	private final String what;
	private final Function<String, T> fromText;
	private final Function<T, String> toText;

	TextConverter(String what, Function<String, T> fromText) {
		this(what, fromText, Object::toString);
	}

	TextConverter(String what, Function<String, T> fromText, Function<T, String> toText) {
		this.what = what;
		this.fromText = fromText;
		this.toText = toText;
	}

	@Override
	public T toValue(String text, INode node) {
		if (text == null) {
			return null;
		}
		if (text.length() > LONGEST) {
			String beginning = text.substring(0, LONGEST) + "…";
			throw new ValueConverterException(no(beginning), node, NO_CAUSE);
		}
		try {
			return fromText.apply(text);
		} catch (NumberFormatException | DateTimeException | NoSuchElementException wrong) {
			throw new ValueConverterException(no(text), node, NO_CAUSE);
		} catch (IllegalArgumentException explained) {
			throw new ValueConverterException(explained.getMessage(), node, NO_CAUSE);
		}
	}

	private String no(String text) {
		return Messages.of("no." + what, text);
	}

	@Override
	public String toString(T value) {
		return toText.apply(value);
	}
}
