package padwright.engine.evidence;

/**
 * Draws rims from what is known before, and moves them step by step to what is known after the feeling: the readings
 * are let in little by little, the rims that go with them badly are replaced by ones that go well, and all are moved
 * about, each half by what the other half is like, which stands still meanwhile. (P. Del Moral, A. Doucet and A. Jasra,
 * Sequential Monte Carlo samplers, 2006; from memory.) The same numbers on every machine. Changes; for one thread.
 */
final class RimSampler {

	/** Share of the rims that shall still count after a step. */
	private static final double COUNTING = 0.5;
	private static final int HALVINGS = 30;
	/** How often each rim is moved on ellipses after a step, and after the last: enough to forget its siblings. */
	private static final int ELLIPSES = 2;
	private static final int LAST_ELLIPSES = 4;

	private final RandomStream random;
	private final RimCrowd crowd;
	private final DifferenceMove differences;
	private final EllipseMove ellipses;
	private double letIn;

	/** @param count even */
	RimSampler(RimWeights weights, int count, long seed) {
		random = new RandomStream(seed);
		crowd = new RimCrowd(weights, count, random);
		differences = new DifferenceMove(crowd, random);
		ellipses = new EllipseMove(crowd, random);
	}

	double[][] sample() {
		while (letIn < 1) {
			double step = step();
			crowd.letIn(step, random);
			letIn += step;
			crowd.shuffle(random);
			moveByDifferences();
			for (int time = 0; time < (letIn < 1 ? ELLIPSES : LAST_ELLIPSES); time++) {
				moveOnEllipses();
			}
		}
		return crowd.states();
	}

	/** How much more can be let in at once. */
	private double step() {
		double most = 1 - letIn;
		double least = COUNTING * crowd.count();
		if (crowd.worth(most) >= least) {
			return most;
		}
		double low = 0;
		double high = most;
		for (int halving = 0; halving < HALVINGS; halving++) {
			double middle = (low + high) / 2;
			if (crowd.worth(middle) >= least) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return high;
	}

	private void moveByDifferences() {
		int half = crowd.count() / 2;
		for (int rim = 0; rim < crowd.count(); rim++) {
			differences.move(rim, rim < half ? half : 0, half, letIn);
		}
	}

	private void moveOnEllipses() {
		int half = crowd.count() / 2;
		for (int rim = 0; rim < crowd.count(); rim++) {
			if (rim % half == 0) {
				ellipses.take(rim < half ? half : 0, half);
			}
			ellipses.move(rim, letIn);
		}
	}
}
