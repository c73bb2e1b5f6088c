package padwright.workup.words;

import java.util.function.Supplier;

import padwright.engine.length.LengthUnit;

/**
 * The unit in which shims and gaps are told. As with the language there is one choice for the whole program, and certain
 * work, such as a paper that says its unit itself, may agree on another one.
 */
public final class ShownUnit {

	private static final ThreadLocal<LengthUnit> AGREED = new ThreadLocal<>();

	private static volatile LengthUnit chosen = LengthUnit.THOU;

	private ShownUnit() {
	}

	/** The unit of shims and gaps just now. Diameters are in mm in any case. */
	public static LengthUnit now() {
		LengthUnit agreed = AGREED.get();
		return agreed == null ? chosen : agreed;
	}

	/** Whatever is told from now on is in this unit. */
	public static void choose(LengthUnit wanted) {
		chosen = wanted;
	}

	/** Does work with lengths in a certain unit; in this thread alone. */
	public static <T> T in(LengthUnit unit, Supplier<T> work) {
		LengthUnit before = AGREED.get();
		AGREED.set(unit);
		try {
			return work.get();
		} finally {
			AGREED.set(before);
		}
	}

	/** As it is written behind a figure. */
	public static String symbol() {
		return now() == LengthUnit.MICROMETRE ? "\u00B5m" : now().symbol();
	}
}
