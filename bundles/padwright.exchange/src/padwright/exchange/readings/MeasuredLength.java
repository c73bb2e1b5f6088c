package padwright.exchange.readings;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.exchange.ExchangeException;
import padwright.model.Lengths;

/** Figures of indicators: a point or a comma before the decimals, a unit behind or in the head of the column. */
final class MeasuredLength {

	private static final Pattern FIGURE = Pattern
			.compile("([+-]?(?:[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+))\\s*([\\p{L}\u00B5\"]*)");
	private static final int LONGEST = 40;

	/** A unit of ours, and how many of it one is. */
	record Unit(LengthUnit unit, int times) {
	}

	private static final Map<String, Unit> UNITS = Map.ofEntries(Map.entry("thou", new Unit(LengthUnit.THOU, 1)),
			Map.entry("mil", new Unit(LengthUnit.THOU, 1)), Map.entry("in", new Unit(LengthUnit.THOU, 1000)),
			Map.entry("inch", new Unit(LengthUnit.THOU, 1000)), Map.entry("\"", new Unit(LengthUnit.THOU, 1000)),
			Map.entry("mm", new Unit(LengthUnit.MILLIMETRE, 1)), Map.entry("um", new Unit(LengthUnit.MICROMETRE, 1)),
			// Both signs for micro: the Greek letter and the older sign.
			Map.entry("\u00B5m", new Unit(LengthUnit.MICROMETRE, 1)), Map.entry("\u03BCm", new Unit(LengthUnit.MICROMETRE, 1)));

	private MeasuredLength() {
	}

	/** The unit of a name; empty for a name that is none. */
	static Optional<Unit> unit(String name) {
		return Optional.ofNullable(UNITS.get(name.strip().toLowerCase(Locale.ROOT)));
	}

	/**
	 * The length that a cell tells.
	 *
	 * @param usual the unit where none stands behind the figure
	 * @throws ExchangeException if it tells none, or one that is not known to the nanometre
	 */
	static Length of(String cell, Optional<Unit> usual, int line) throws ExchangeException {
		Matcher figure = FIGURE.matcher(cell.strip());
		if (!figure.matches() || cell.length() > LONGEST) {
			throw new ExchangeException(line, "\"" + cell + "\" is no figure such as 0.381 or 0,381");
		}
		BigDecimal number = new BigDecimal(figure.group(1).replace(',', '.'));
		if (number.signum() < 0) {
			throw new ExchangeException(line, "\"" + cell + "\" is below zero, which no gap is; set the indicator to zero on"
					+ " the rim and measure again");
		}
		Unit unit = unit(figure.group(2), usual, cell, line);
		return Lengths.exact(number.multiply(BigDecimal.valueOf(unit.times())), unit.unit())
				.orElseThrow(() -> new ExchangeException(line, "\"" + cell + "\" is no whole number of nanometres"));
	}

	private static Unit unit(String written, Optional<Unit> usual, String cell, int line) throws ExchangeException {
		if (written.isEmpty()) {
			return usual.orElseThrow(() -> new ExchangeException(line, "\"" + cell
					+ "\" has no unit; write one behind it or into the head of its column, or name it with --unit"));
		}
		return unit(written).orElseThrow(() -> new ExchangeException(line,
				"\"" + written + "\" is no unit of length: thou, mm, um or in"));
	}
}
