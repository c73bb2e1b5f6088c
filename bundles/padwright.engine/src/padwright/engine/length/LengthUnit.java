package padwright.engine.length;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A unit in which lengths are read and written. One inch is exactly 25.4 mm (NIST SP 811, B.8), so one thou
 * (0.001 in) is exactly 25 400 nm.
 */
public enum LengthUnit {
	THOU("thou", 25_400),
	MILLIMETRE("mm", 1_000_000),
	MICROMETRE("um", 1_000);

	private final String symbol;
	private final long nanometres;

	LengthUnit(String symbol, long nanometres) {
		this.symbol = symbol;
		this.nanometres = nanometres;
	}

	/** The unit as it is written behind a number. */
	public String symbol() {
		return symbol;
	}

	/** How all of them are written, in their order. */
	public static List<String> symbols() {
		return Arrays.stream(values()).map(LengthUnit::symbol).toList();
	}

	/** Nanometres in one of this unit; exact. */
	public long nanometres() {
		return nanometres;
	}

	/** The unit written as {@code symbol}, if there is one. */
	public static Optional<LengthUnit> bySymbol(String symbol) {
		return Arrays.stream(values()).filter(unit -> unit.symbol.equals(symbol)).findFirst();
	}
}
