package padwright.engine.evidence;

/**
 * A reading that does not go with the others.
 *
 * @param round which, from 0
 * @param reading as it was felt
 * @param doubt the probability that it tells nothing of the gap, 0 to 1
 */
public record DoubtedReading(int round, FeltReading reading, double doubt) {
}
