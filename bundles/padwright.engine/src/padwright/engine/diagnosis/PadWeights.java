package padwright.engine.diagnosis;

import java.util.Map;

/**
 * How much more one pad is to be suspected than another before any note is played, on any scale: a predicted leak in
 * mL/min, or the technician's own guess. Only their ratios count.
 *
 * @param weights by name of the pad, above 0; a pad that is not named weighs 1
 */
public record PadWeights(Map<String, Double> weights) {

	/** Every pad alike. */
	public static final PadWeights EVEN = new PadWeights(Map.of());

	/** @throws IllegalArgumentException if a weight is not positive and finite */
	public PadWeights {
		weights = Map.copyOf(weights);
		weights.forEach((pad, weight) -> {
			if (!(weight > 0 && weight < Double.POSITIVE_INFINITY)) {
				throw new IllegalArgumentException("weight " + weight + " of pad " + pad + " is not above zero");
			}
		});
	}

	/** The weight of a pad. */
	public double of(String pad) {
		return weights.getOrDefault(pad, 1.0);
	}
}
