package padwright.engine.leak;

import padwright.engine.length.Length;

/**
 * A thin flat slit between pad and rim, much wider than it is high.
 *
 * @param widthMetres along the rim in m, more than 0
 * @param height the gap; 0 or less is closed
 * @param depth the way the air takes through it, more than 0
 */
record Slit(double widthMetres, Length height, Length depth) {

	/** Loss at the entry and exit of a slit: value from memory after Baker, Sharples and Ward (1987), unverified. */
	static final double ENTRY_LOSS = 1.5;

	private static final double MILLILITRES_PER_MINUTE = 60e6;

	/** Plane Poiseuille flow: w h³ / (12 µ L), in m³/(s·Pa). */
	double conductance(Air air) {
		double h = heightMetres();
		return widthMetres * h * h * h / (12 * air.viscosity() * metres(depth));
	}

	/**
	 * Flow in mL/min: the positive root Q of Δp = Q / conductance + ρ C Q² / (2 w² h²). The second term is below 1 % for
	 * a gap of 1 thou at 1 kPa and matters above about 2 thou; it is never left out, so that a wider gap never leaks
	 * less.
	 */
	double millilitresPerMinute(Tester tester) {
		if (height.signum() <= 0) {
			return 0;
		}
		double resistance = 1 / conductance(tester.air());
		double area = widthMetres * heightMetres();
		double loss = tester.air().density() * ENTRY_LOSS / (2 * area * area);
		double root = StrictMath.sqrt(resistance * resistance + 4 * loss * tester.pascals());
		return MILLILITRES_PER_MINUTE * 2 * tester.pascals() / (resistance + root);
	}

	static double cubicMetresPerSecond(double millilitresPerMinute) {
		return millilitresPerMinute / MILLILITRES_PER_MINUTE;
	}

	static double metres(Length length) {
		return length.nanometres() * 1e-9;
	}

	private double heightMetres() {
		return Math.max(0, metres(height));
	}
}
