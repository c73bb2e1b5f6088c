package padwright.workup.words;

import java.text.DecimalFormatSymbols;
import java.text.FieldPosition;
import java.text.Format;
import java.text.MessageFormat;
import java.text.ParsePosition;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * The texts of a bundle in the language in which the program speaks just now, {@link java.util.Locale.Category#DISPLAY}. English
 * stands in the file without a language, and is spoken where there is no translation.
 */
public final class Texts {

	/** Else a German machine that is asked for Danish would answer in German. */
	private static final Control ELSE_ENGLISH = Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);

	private final String name;
	private final ClassLoader bundle;
	private final Map<Locale, ResourceBundle> byLanguage = new ConcurrentHashMap<>();

	private Texts(String name, ClassLoader bundle) {
		this.name = name;
		this.bundle = bundle;
	}

	/** The texts of {@code file.properties} and its translations, which lie beside {@code owner}. */
	public static Texts beside(Class<?> owner, String file) {
		return new Texts(owner.getPackageName() + "." + file, owner.getClassLoader());
	}

	/**
	 * A text by its key, with {@code arguments} in the places of {@code {0}} and so on: lengths, hours and days as they are written
	 * for people, all else as it prints itself. A place such as <code>{0,choice,0#keys|1#key|1&lt;keys}</code> takes a number, and
	 * says the word that goes with it.
	 *
	 * @throws MissingResourceException if there is no such text
	 */
	public String of(String key, Object... arguments) {
		MessageFormat text = new MessageFormat(spoken().getString(key), Locale.ROOT);
		text.setFormats(Stream.of(text.getFormats()).map(given -> given == null ? Printed.SELF : given).toArray(Format[]::new));
		return text.format(arguments);
	}

	/** Writes what stands in a place that says nothing else. */
	private static final class Printed extends Format {

		private static final long serialVersionUID = 1;
		private static final Format SELF = new Printed();

		@Override
		public StringBuffer format(Object argument, StringBuffer text, FieldPosition where) {
			return text.append(printed(argument));
		}

		@Override
		public Object parseObject(String text, ParsePosition from) {
			throw new UnsupportedOperationException("texts are for people");
		}
	}

	/** For people, in the language and the unit of now. */
	static String printed(Object argument) {
		if (argument instanceof Length length) {
			return LengthWords.exact(length);
		}
		if (argument instanceof ClockHour hour) {
			return decimal(hour.toString());
		}
		return argument instanceof LocalDate day ? Days.of(day) : String.valueOf(argument);
	}

	/** A text without arguments, if there is one. */
	public Optional<String> find(String key) {
		return spoken().containsKey(key) ? Optional.of(of(key)) : Optional.empty();
	}

	/** The keys of all texts. */
	public Set<String> keys() {
		return spoken().keySet();
	}

	/** The language in which the program speaks just now. */
	public static Locale language() {
		return Locale.getDefault(Locale.Category.DISPLAY);
	}

	/** A figure that is written with a point, with the decimal sign of the language in which the program speaks. */
	public static String decimal(String figure) {
		return figure.replace('.', DecimalFormatSymbols.getInstance(language()).getDecimalSeparator());
	}

	private ResourceBundle spoken() {
		return byLanguage.computeIfAbsent(language(),
				language -> ResourceBundle.getBundle(name, language, bundle, ELSE_ENGLISH));
	}
}
