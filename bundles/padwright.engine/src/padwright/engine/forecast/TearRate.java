package padwright.engine.forecast;

import java.util.List;

/**
 * What is believed about the pads a player tears in a year: a gamma distribution, conjugate to the Poisson counts that
 * are observed, so that each period adds its count to {@code shape} and its years to {@code years}.
 *
 * @param shape pads torn in the experience behind the belief, 0.01 to 1 000 000
 * @param years years of that experience, 0.01 to 1 000 000; shape / years, the mean rate, is at most 1000
 */
public record TearRate(double shape, double years) {

	/**
	 * Most players tear 1 to 2 pads a year (common practice, no source), read as: about two players in three do. The
	 * weight of six player-years follows from that.
	 */
	public static final TearRate MOST_PLAYERS = new TearRate(9, 6);

	/**
	 * A player with acid saliva tears 6 to 7 pads a year (common practice, no source): mean 6.5, with the same weight
	 * of six player-years, so that a history corrects either belief equally fast.
	 */
	public static final TearRate ACID_SALIVA = new TearRate(39, 6);

	/** @throws IllegalArgumentException if one is out of range */
	public TearRate {
		if (!isInRange(shape) || !isInRange(years) || shape / years > 1000) {
			throw new IllegalArgumentException("a tear rate of " + shape + " pads in " + years
					+ " years is out of range: each 0.01 to a million, at most 1000 pads a year");
		}
	}

	/** Mean pads a year. */
	public double mean() {
		return shape / years;
	}

	/** The belief after these periods too. */
	public TearRate after(List<TornPads> history) {
		int torn = history.stream().mapToInt(TornPads::torn).reduce(0, Math::addExact);
		double observed = history.stream().mapToDouble(TornPads::years).sum();
		return new TearRate(shape + torn, years + observed);
	}

	/**
	 * How many pads will tear in the years to come.
	 *
	 * @param ahead years to the next service, more than 0, at most 100
	 * @param coverage probability of the interval, above 0 and below 1, equally much left out at both ends
	 * @throws IllegalArgumentException if either is out of range
	 */
	public TearForecast forecast(double ahead, double coverage) {
		return new PredictedCounts(this, ahead).forecast(coverage);
	}

	private static boolean isInRange(double value) {
		return value >= 0.01 && value <= 1e6;
	}
}
