package padwright.language.conversion;

import java.math.BigDecimal;
import java.time.LocalDate;

import org.eclipse.xtext.common.services.DefaultTerminalConverters;
import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverter;

import com.google.inject.Singleton;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.LengthUnit;
import padwright.language.messages.Messages;
import padwright.model.FeelerReading;
import padwright.model.Measure;
import padwright.model.Range;
import padwright.model.SignedMeasure;

/** Between the words of the text and the values of the model. */
@Singleton
public class PadwrightValueConverters extends DefaultTerminalConverters {

	@ValueConverter(rule = "Name")
	public IValueConverter<String> name() {
		return new NameConverter(getGrammar(), "Name");
	}

	@ValueConverter(rule = "JointName")
	public IValueConverter<String> jointName() {
		return new NameConverter(getGrammar(), "JointName");
	}

	@ValueConverter(rule = "StageName")
	public IValueConverter<String> stageName() {
		return new NameConverter(getGrammar(), "StageName");
	}

	@ValueConverter(rule = "QualifiedName")
	public IValueConverter<String> qualifiedName() {
		return new QualifiedNameConverter(new NameConverter(getGrammar(), "Name"));
	}

	@ValueConverter(rule = "MaterialName")
	public IValueConverter<String> materialName() {
		return new WordConverter(getGrammar(), "MaterialName");
	}

	@ValueConverter(rule = "ValueName")
	public IValueConverter<String> valueName() {
		return new WordConverter(getGrammar(), "ValueName");
	}

	@ValueConverter(rule = "Measure")
	public IValueConverter<Measure> measure() {
		return new TextConverter<>("length", Measure::valueOf);
	}

	@ValueConverter(rule = "SignedMeasure")
	public IValueConverter<SignedMeasure> signedMeasure() {
		return new TextConverter<>("change", SignedMeasure::valueOf);
	}

	@ValueConverter(rule = "LengthUnit")
	public IValueConverter<LengthUnit> lengthUnit() {
		return new TextConverter<>("unit", symbol -> LengthUnit.bySymbol(symbol).orElseThrow(), LengthUnit::symbol);
	}

	@ValueConverter(rule = "Hour")
	public IValueConverter<ClockHour> hour() {
		return new TextConverter<>("hour", PadwrightValueConverters::hourOf);
	}

	private static ClockHour hourOf(String text) {
		BigDecimal hour = new BigDecimal(text);
		try {
			return ClockHour.ofHour(hour);
		} catch (IllegalArgumentException notOnTheClock) {
			throw new IllegalArgumentException(Messages.of("no.clockHour", hour.toPlainString()), notOnTheClock);
		}
	}

	@ValueConverter(rule = "Range")
	public IValueConverter<Range> range() {
		return new TextConverter<>("range", Range::valueOf);
	}

	@ValueConverter(rule = "Date")
	public IValueConverter<LocalDate> date() {
		return new TextConverter<>("day", LocalDate::parse);
	}

	@ValueConverter(rule = "FeelerReading")
	public IValueConverter<FeelerReading> feelerReading() {
		return new TextConverter<>("feelerReading", FeelerReading::valueOf);
	}

	@ValueConverter(rule = "Decimal")
	public IValueConverter<BigDecimal> decimal() {
		return new TextConverter<>("number", BigDecimal::new, BigDecimal::toPlainString);
	}

	@ValueConverter(rule = "SignedDecimal")
	public IValueConverter<BigDecimal> signedDecimal() {
		return new TextConverter<>("number", text -> new BigDecimal(joined(text)), BigDecimal::toPlainString);
	}

	@ValueConverter(rule = "Cents")
	public IValueConverter<BigDecimal> cents() {
		return new TextConverter<>("number", text -> new BigDecimal(joined(text)),
				cents -> (cents.signum() < 0 ? "" : "+") + cents.toPlainString());
	}

	@ValueConverter(rule = "PropertyName")
	public IValueConverter<String> propertyName() {
		return new TextConverter<>("property", PadwrightValueConverters::joined);
	}

	/** Blanks between the words of a value come as one. */
	private static String joined(String words) {
		return words.replace(" ", "");
	}

	@ValueConverter(rule = "Count")
	public IValueConverter<Integer> count() {
		return new TextConverter<>("count", Integer::valueOf);
	}
}
