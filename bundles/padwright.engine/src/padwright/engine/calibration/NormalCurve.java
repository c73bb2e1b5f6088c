package padwright.engine.calibration;

/** The standard normal distribution, to about fourteen digits, alike on every machine. */
public final class NormalCurve {

	private static final double ROOT_TWO = Math.sqrt(2);
	private static final double ROOT_PI = Math.sqrt(StrictMath.PI);
	private static final double SERIES_UP_TO = 2;
	private static final int FRACTION_DEPTH = 60;

	private NormalCurve() {
	}

	/** The density; zero at infinity. */
	public static double density(double z) {
		return StrictMath.exp(-z * z / 2) / (ROOT_TWO * ROOT_PI);
	}

	/** The probability of a value between two, without cancellation in either tail. */
	public static double between(double low, double high) {
		return low > 0 ? below(-low) - below(-high) : below(high) - below(low);
	}

	/** The probability of a value below {@code z}. */
	public static double below(double z) {
		double x = Math.abs(z) / ROOT_TWO;
		double tail = x < SERIES_UP_TO ? (1 - errorFunction(x)) / 2 : complementaryErrorFunction(x) / 2;
		return z < 0 ? tail : 1 - tail;
	}

	/** erf x = 2/√π · exp(−x²) · Σ 2ⁿ x²ⁿ⁺¹ / (1·3·5 … (2n + 1)); Abramowitz and Stegun 7.1.6, from memory. */
	private static double errorFunction(double x) {
		double term = x;
		double sum = 0;
		for (int n = 1; sum + term != sum; n++) {
			sum += term;
			term *= 2 * x * x / (2 * n + 1);
		}
		return 2 / ROOT_PI * StrictMath.exp(-x * x) * sum;
	}

	/** √π · exp(x²) · erfc x = 1/(x + ½/(x + 1/(x + 3⁄2/(x + 2/(x + …))))); ibid. 7.1.14, from memory. */
	private static double complementaryErrorFunction(double x) {
		double fraction = x;
		for (int n = FRACTION_DEPTH; n > 0; n--) {
			fraction = x + n / 2.0 / fraction;
		}
		return StrictMath.exp(-x * x) / (ROOT_PI * fraction);
	}
}
