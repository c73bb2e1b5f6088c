package padwright.engine.acoustics;

/** From the temperature of air to its constants, at one atmosphere. */
@FunctionalInterface
public interface AirModel {

	/** 0 °C in K. */
	double ICE = 273.15;

	/**
	 * Dry air without carbon dioxide: A. Chaigne and J. Kergomard, Acoustics of Musical Instruments (Springer 2016),
	 * chapter 5, p. 241, where conductivity and heat capacity are given in calories of 4.184 J.
	 */
	AirModel CHAIGNE_KERGOMARD = celsius -> {
		double warmth = (celsius + ICE) / ICE;
		return new AirConstants(331.45 * StrictMath.sqrt(warmth), 1.2929 / warmth, 1.708e-5 * (1 + 0.0029 * celsius),
				5.77e-3 * (1 + 0.0033 * celsius) * 4.184, 240 * 4.184, 1.402);
	};

	/**
	 * Dry air, linear about 26.85 °C and stated for ten degrees to both sides: D. H. Keefe, Acoustical wave propagation
	 * in cylindrical ducts, J. Acoust. Soc. Am. 75 (1984) 58–62. It gives the square root of the Prandtl number instead
	 * of a conductivity; the heat capacity is that of an ideal gas, c² / ((γ − 1) T), and the
	 * conductivity μ Cp / Pr, so that losses depend on his constants alone.
	 */
	AirModel KEEFE = celsius -> {
		double d = celsius - 26.85;
		double speed = 347.23 * (1 + 0.00166 * d);
		double viscosity = 1.846e-5 * (1 + 0.0025 * d);
		double heatRatio = 1.4017 * (1 - 0.00002 * d);
		double rootOfPrandtl = 0.8410 * (1 - 0.0002 * d);
		double heatCapacity = speed * speed / ((heatRatio - 1) * (celsius + ICE));
		return new AirConstants(speed, 1.1769 * (1 - 0.00335 * d), viscosity,
				viscosity * heatCapacity / (rootOfPrandtl * rootOfPrandtl), heatCapacity, heatRatio);
	};

	/**
	 * @param celsius temperature in °C, −20 to 60 for sense
	 */
	AirConstants at(double celsius);

	/**
	 * Damp air with carbon dioxide, as it is breathed out: A. Ernoult, research report RR-9500 (Inria 2023).
	 *
	 * @param humidity relative, 0 to 1
	 * @param carbonDioxide share of the molecules, 0 (fresh air 0.00042) to 0.1
	 * @throws IllegalArgumentException if one is out of range
	 */
	static AirModel damp(double humidity, double carbonDioxide) {
		return new DampAir(humidity, carbonDioxide);
	}
}
