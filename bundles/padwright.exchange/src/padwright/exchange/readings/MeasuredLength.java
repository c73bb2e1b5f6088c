package padwright.exchange.readings;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.exchange.tree.ExchangeException;
import padwright.model.Lengths;

/** Figures of indicators: a point or a comma before the decimals, a unit behind or in the head of the column. */
final class MeasuredLength {

	static final Pattern FIGURE = Pattern
			.compile("([+-]?(?:[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+))\\s*([\\p{L}\u00B5\"]*)");
	static final int LONGEST = 40;

	/** A unit of ours, and how many of it one is. */
	record Unit(LengthUnit unit, int times) {
	}

	/** What indicators and their programs write besides the language's own signs. */
	private static final Map<String, Unit> OTHERS = Map.of("mil", new Unit(LengthUnit.THOU, 1),
			"in", new Unit(LengthUnit.THOU, 1000), "inch", new Unit(LengthUnit.THOU, 1000),
			"\"", new Unit(LengthUnit.THOU, 1000),
			// Both signs for micro: the Greek letter and the older sign.
			"\u00B5m", new Unit(LengthUnit.MICROMETRE, 1), "\u03BCm", new Unit(LengthUnit.MICROMETRE, 1));

	private MeasuredLength() {
	}

	/** The unit of a name; empty for a name that is none. */
	static Optional<Unit> unit(String name) {
		String sign = name.strip().toLowerCase(Locale.ROOT);
		return LengthUnit.bySymbol(sign).map(unit -> new Unit(unit, 1)).or(() -> Optional.ofNullable(OTHERS.get(sign)));
	}

	/** All names of units, the longest first, as a pattern. */
	static String pattern() {
		return Stream.concat(LengthUnit.symbols().stream(), OTHERS.keySet().stream())
				.sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()))
				.map(Pattern::quote).collect(Collectors.joining("|"));
	}

	/** That a name is none of these. */
	static String notOne(String written) {
		return "\"" + written + "\" is no unit of length: " + String.join(", ", LengthUnit.symbols()) + " or in";
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
		return unit(written).orElseThrow(() -> new ExchangeException(line, notOne(written)));
	}
}
