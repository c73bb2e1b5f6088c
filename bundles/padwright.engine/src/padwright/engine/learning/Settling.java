package padwright.engine.learning;

import java.util.List;
import java.util.Optional;

import padwright.engine.learning.NormalPool.Estimate;

/**
 * By how much gaps of one kind of pad change in its first weeks. Changes on one instrument are alike, since its rims, player
 * and climate are; so each instrument has a mean of its own, normal about the common one ({@link NormalPool}). A gap is
 * taken to lie in the middle between the leaf that slides and the next, which is right on average where gaps lie anywhere
 * between leaves.
 */
public final class Settling {

	/** Fewer changes tell nothing of their scatter. */
	public static final int LEAST_CHANGES = 24;

	/** So few of one instrument tell nothing of it. */
	private static final int LEAST_OF_ONE = 2;
	/** No scatter is believed to be less, in the unit of the changes: what leaves of half a thou leave undecided. */
	private static final double LEAST_SCATTER = 0.05;

	private Settling() {
	}

	/**
	 * The common change; nothing where there are too few instruments or changes to tell.
	 *
	 * @param instruments changes of each, thou, more than 0 where gaps opened
	 */
	public static Optional<Learned> of(List<List<Double>> instruments) {
		List<List<Double>> telling = instruments.stream().filter(changes -> changes.size() >= LEAST_OF_ONE).toList();
		int count = telling.stream().mapToInt(List::size).sum();
		if (telling.size() < NormalPool.LEAST_GROUPS || count < LEAST_CHANGES) {
			return Optional.empty();
		}
		double squares = telling.stream().mapToDouble(Settling::squares).sum();
		double scatter = Math.max(LEAST_SCATTER, StrictMath.sqrt(squares / (count - telling.size())));
		return Optional.of(new NormalPool(telling.stream().map(changes -> new Estimate(mean(changes),
				scatter / StrictMath.sqrt(changes.size()))).toList()).common());
	}

	private static double mean(List<Double> changes) {
		return changes.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
	}

	private static double squares(List<Double> changes) {
		double mean = mean(changes);
		return changes.stream().mapToDouble(change -> (change - mean) * (change - mean)).sum();
	}
}
