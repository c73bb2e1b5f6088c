package padwright.workup.words;

import padwright.engine.length.LengthUnit;

/**
 * The unit in which shims and gaps are told. As with the language there is one choice for the whole program, whatever
 * thread asks.
 */
public final class ShownUnit {

	private static volatile LengthUnit chosen = LengthUnit.THOU;

	private ShownUnit() {
	}

	/** The unit of shims and gaps just now. Diameters are in mm in any case. */
	public static LengthUnit now() {
		return chosen;
	}

	/** Whatever is told from now on is in this unit. */
	public static void choose(LengthUnit wanted) {
		chosen = wanted;
	}

	/** As it is written behind a figure. */
	public static String symbol() {
		return now() == LengthUnit.MICROMETRE ? "\u00B5m" : now().symbol();
	}
}
