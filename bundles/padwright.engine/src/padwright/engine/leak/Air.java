package padwright.engine.leak;

/**
 * Dry air at one atmosphere; near saturation its viscosity is less than 1 % lower.
 *
 * @param viscosity in Pa·s, more than 0
 * @param density in kg/m³, more than 0
 */
public record Air(double viscosity, double density) {

	/** µPa·s at 0, 20, 40 and 60 °C: Bird, Stewart and Lightfoot, Transport Phenomena, table 1.1-2. */
	private static final double[] VISCOSITY = { 17.16, 18.13, 19.08, 19.99 };
	private static final double STEP_CELSIUS = 20;
	private static final double ATMOSPHERE = 101_325;
	/** Specific gas constant of dry air in J/(kg·K); value from memory. */
	private static final double GAS_CONSTANT = 287.05;

	/** @throws IllegalArgumentException if either is not above zero */
	public Air {
		if (!(viscosity > 0 && density > 0)) {
			throw new IllegalArgumentException("air needs a viscosity and a density above zero, not " + viscosity
					+ " Pa·s and " + density + " kg/m³");
		}
	}

	/**
	 * Air at a temperature: viscosity interpolated linearly in the table, density of an ideal gas.
	 *
	 * @param celsius 0 to 60 °C
	 * @throws IllegalArgumentException if it is out of range
	 */
	public static Air at(double celsius) {
		if (!(celsius >= 0 && celsius <= 60)) {
			throw new IllegalArgumentException("no viscosity of air is tabled at " + celsius + " °C, only 0 to 60");
		}
		int row = Math.min((int) (celsius / STEP_CELSIUS), VISCOSITY.length - 2);
		double fraction = celsius / STEP_CELSIUS - row;
		double viscosity = VISCOSITY[row] + fraction * (VISCOSITY[row + 1] - VISCOSITY[row]);
		return new Air(viscosity * 1e-6, ATMOSPHERE / (GAS_CONSTANT * (celsius + 273.15)));
	}
}
