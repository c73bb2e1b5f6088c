package padwright.engine.forecast;

/**
 * The negative binomial distribution of a Poisson count over {@code ahead} years whose rate is gamma distributed:
 * P(0) = (β/(β+t))^α, P(k+1) = P(k) · (α+k)/(k+1) · t/(β+t). Summed in logarithms, so that a large α does not vanish.
 */
final class PredictedCounts {

	private final TearRate rate;
	private final double ahead;

	PredictedCounts(TearRate rate, double ahead) {
		if (!(ahead > 0 && ahead <= 100)) {
			throw new IllegalArgumentException(ahead + " years ahead is not above 0 and at most 100");
		}
		this.rate = rate;
		this.ahead = ahead;
	}

	TearForecast forecast(double coverage) {
		if (!(coverage > 0 && coverage < 1)) {
			throw new IllegalArgumentException("coverage " + coverage + " is not between 0 and 1");
		}
		double outside = (1 - coverage) / 2;
		return new TearForecast(rate.mean() * ahead, quantile(outside), quantile(1 - outside), coverage);
	}

	/** The least count that is not exceeded with this probability. */
	int quantile(double probability) {
		double logTerm = -rate.shape() * StrictMath.log1p(ahead / rate.years());
		double growth = StrictMath.log(ahead / (rate.years() + ahead));
		double sum = StrictMath.exp(logTerm);
		int count = 0;
		while (sum < probability && !isPastTheTail(count, logTerm)) {
			logTerm += StrictMath.log((rate.shape() + count) / (count + 1)) + growth;
			sum += StrictMath.exp(logTerm);
			count++;
		}
		return count;
	}

	/** Whether the terms left are too small to change a sum near one. */
	private boolean isPastTheTail(int count, double logTerm) {
		return count > rate.mean() * ahead && logTerm < -60;
	}
}
