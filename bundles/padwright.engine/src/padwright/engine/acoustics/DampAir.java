package padwright.engine.acoustics;

/**
 * Air with water and carbon dioxide in it, by the fits of A. Ernoult, research report RR-9500 (Inria 2023), about 20
 * °C, a humid share of 0.011571 and 420 ppm of carbon dioxide.
 */
record DampAir(double humidity, double carbonDioxide) implements AirModel {

	private static final double TWENTY = 293.15;

	DampAir {
		if (!(humidity >= 0 && humidity <= 1 && carbonDioxide >= 0 && carbonDioxide <= 0.1)) {
			throw new IllegalArgumentException("air with a relative humidity of " + humidity + " and a share of "
					+ carbonDioxide + " of carbon dioxide is out of range: 0 to 1 and 0 to 0.1");
		}
	}

	@Override
	public AirConstants at(double celsius) {
		double warmth = (celsius + ICE) / TWENTY;
		double t = warmth - 1;
		double h = vapour(warmth) - 0.011571;
		double x = carbonDioxide - 4.2e-4;
		double speed = 343.986
				* StrictMath.sqrt(warmth * (1 + 0.314 * h - 0.520 * x + 0.25 * x * x - 0.16 * x * t));
		double density = 1.19930 / warmth * (1 - 0.3767 * h + 0.4162 * x - 0.00291 * t);
		double heatCapacity = 1012.25 * (1 + 0.5438 * h + 0.638 * h * h - 0.1594 * x + 0.075 * x * x + 9.52e-3 * t
				+ 4.06e-2 * t * t + 0.3976 * x * t);
		double heatRatio = 1.40108 * (1 - 0.060 * h - 0.104 * x - 0.0087 * t - 0.154 * x * t);
		return new AirConstants(speed, density, 1.8206e-5 * (1 + 0.77013 * t), 2.5562e-2 * (1 + 0.8490 * t),
				heatCapacity, heatRatio);
	}

	/** Share of the molecules that are water. */
	private double vapour(double warmth) {
		return humidity * StrictMath.pow(10, 5.21899 - 5.8294 / warmth - 1.0252 / (warmth * warmth));
	}
}
