package padwright.engine.evidence;

import java.util.List;

import padwright.engine.length.Length;

/**
 * What is known of the clearance under a pad before it is felt: a sum of undulations around the clock, each of normal
 * amplitude. The mean height does not matter to a key that turns until it touches.
 *
 * @param deviations standard deviation of the cosine and of the sine part of undulation 1 (tilt), 2 (saddle) … 6, each
 *        more than zero
 */
public record RimPrior(List<Length> deviations) {

	/** The undulations that a rim is taken to have. */
	public static final int ORDERS = 6;

	/** @throws IllegalArgumentException if there are not six, or one is not above zero */
	public RimPrior {
		deviations = List.copyOf(deviations);
		if (deviations.size() != ORDERS || deviations.stream().anyMatch(deviation -> deviation.signum() <= 0)) {
			throw new IllegalArgumentException("not six deviations above nothing: " + deviations);
		}
	}

	/** What rims and cups in a condition are usually like. */
	public static RimPrior of(RimCondition condition) {
		return condition.prior();
	}

	static RimPrior ofThou(String... deviations) {
		return new RimPrior(List.of(deviations).stream().map(Length::thou).toList());
	}

	/** In nm. */
	double deviation(int order) {
		return deviations.get(order - 1).nanometres();
	}
}
