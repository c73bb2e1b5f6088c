package padwright.workup.rules;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.LengthUnit;

/** What a property of a key is, and the units its quantities are written in. */
public enum PropertyType {
	NAME(new String[0]), MATERIAL(new String[0]), LENGTH(LengthUnit.values()), TEMPERATURE("°C"), HUMIDITY("%RH"), YEARS("years"), WEIGHT("grams"),
	NUMBER(new String[0]);

	private final List<String> units;

	PropertyType(String... units) {
		this.units = List.of(units);
	}

	PropertyType(LengthUnit... units) {
		this(Arrays.stream(units).map(LengthUnit::symbol).toArray(String[]::new));
	}

	boolean isNamed() {
		return this == NAME || this == MATERIAL;
	}

	/** The units that may stand behind a number; none for a bare number. */
	List<String> units() {
		return units;
	}

	boolean takesUnit(String unit) {
		return unit == null ? units.isEmpty() : units.contains(unit);
	}

	/** A number of a unit in the base unit: nanometres for lengths, else as it stands; nothing for a wrong unit. */
	Optional<BigDecimal> inBaseUnit(BigDecimal number, String unit) {
		if (number == null || !takesUnit(unit)) {
			return Optional.empty();
		}
		return this == LENGTH
				? LengthUnit.bySymbol(unit).map(length -> number.multiply(BigDecimal.valueOf(length.nanometres())))
				: Optional.of(number);
	}
}
