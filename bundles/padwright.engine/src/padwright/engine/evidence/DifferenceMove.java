package padwright.engine.evidence;

/**
 * Moves a rim by the difference of two others, accepted as Metropolis does: now and then a whole difference, which leads
 * from peak to peak. (C. ter Braak, A Markov chain Monte Carlo version of the genetic algorithm differential evolution,
 * 2006; from memory.) Changes; for one thread.
 */
final class DifferenceMove {

	/** How often a whole difference. */
	private static final double WHOLE = 0.1;
	/** Of a shape that is normal, over the root of twice its dimensions. */
	private static final double BEST_STRIDE = 2.38;
	private static final double LEAST_OF_BEST = 0.3;

	private final RimCrowd crowd;
	private final RandomStream random;
	private final int normals;
	private double[] proposal;

	DifferenceMove(RimCrowd crowd, RandomStream random) {
		this.crowd = crowd;
		this.random = random;
		normals = crowd.weights().layout().normals();
		proposal = new double[crowd.weights().layout().size()];
	}

	/**
	 * Moves a rim, or leaves it.
	 *
	 * @param others the first of those whose differences it may be moved by; it is none of them
	 * @param letIn how far the readings are let in, above 0 to 1
	 */
	void move(int rim, int others, int othersCount, double letIn) {
		double[] state = crowd.state(rim);
		double[] one = crowd.state(others + random.below(othersCount));
		double[] other = crowd.state(others + random.below(othersCount));
		double stride = stride();
		for (int i = 0; i < proposal.length; i++) {
			proposal[i] = state[i] + stride * (one[i] - other[i]);
		}
		double prior = 0;
		for (int normal = 0; normal < normals; normal++) {
			prior += state[normal] * state[normal] - proposal[normal] * proposal[normal];
		}
		double least = crowd.log(rim) + (StrictMath.log(1 - random.uniform()) - prior / 2) / letIn;
		double log = crowd.weights().weigh(proposal, least);
		if (log >= least) {
			proposal = crowd.replace(rim, proposal, log);
		}
	}

	private double stride() {
		double mark = random.uniform();
		return mark < WHOLE ? 1 : BEST_STRIDE / Math.sqrt(2 * normals) * (LEAST_OF_BEST + mark);
	}
}
