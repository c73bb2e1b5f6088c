package padwright.engine.evidence;

/**
 * Draws rims from what is known before, and moves them step by step to what is known after the feeling: the readings
 * are let in little by little, the rims that go with them badly are replaced by ones that go well, and all are moved
 * about by differences of others, accepted as Metropolis does. (P. Del Moral, A. Doucet and A. Jasra, Sequential Monte
 * Carlo samplers, 2006; C. ter Braak, A Markov chain Monte Carlo version of the genetic algorithm differential
 * evolution, 2006; both from memory.) The same numbers on every machine. Changes; for one thread.
 */
final class RimSampler {

	private static final long SEED = 0x5EA7L;
	/** Share of the rims that shall still count after a step. */
	private static final double COUNTING = 0.5;
	private static final int HALVINGS = 30;
	/** How often each rim is moved after a step, and after the last. */
	private static final int SWEEPS = 5;
	private static final int LAST_SWEEPS = 12;

	private final RimWeights weights;
	private final RandomStream random = new RandomStream(SEED);
	private final int count;
	private double[][] states;
	private double[] logs;
	private double letIn;

	RimSampler(RimWeights weights, int count) {
		this.weights = weights;
		this.count = count;
		states = new double[count][];
		logs = new double[count];
	}

	double[][] sample() {
		for (int rim = 0; rim < count; rim++) {
			states[rim] = weights.layout().draw(random);
			logs[rim] = weights.weigh(states[rim]);
		}
		while (letIn < 1) {
			double step = step();
			replace(step);
			letIn += step;
			move(letIn < 1 ? SWEEPS : LAST_SWEEPS);
		}
		return states;
	}

	/** How much more can be let in at once. */
	private double step() {
		double most = 1 - letIn;
		if (counting(most) >= COUNTING * count) {
			return most;
		}
		double low = 0;
		double high = most;
		for (int halving = 0; halving < HALVINGS; halving++) {
			double middle = (low + high) / 2;
			if (counting(middle) >= COUNTING * count) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return high;
	}

	/** How many equal rims unequal ones are worth: (Σw)² / Σw². */
	private double counting(double step) {
		double greatest = greatestLog();
		double sum = 0;
		double squares = 0;
		for (double log : logs) {
			double weight = StrictMath.exp(step * (log - greatest));
			sum += weight;
			squares += weight * weight;
		}
		return sum * sum / squares;
	}

	private double greatestLog() {
		double greatest = Double.NEGATIVE_INFINITY;
		for (double log : logs) {
			greatest = Math.max(greatest, log);
		}
		return greatest;
	}

	/** Each rim as often as its weight asks, by systematic resampling. */
	private void replace(double step) {
		double greatest = greatestLog();
		double[] sums = new double[count];
		double sum = 0;
		for (int rim = 0; rim < count; rim++) {
			sum += StrictMath.exp(step * (logs[rim] - greatest));
			sums[rim] = sum;
		}
		double[][] chosen = new double[count][];
		double[] chosenLogs = new double[count];
		double start = random.uniform();
		int from = 0;
		for (int rim = 0; rim < count; rim++) {
			double mark = (rim + start) * sum / count;
			while (from < count - 1 && sums[from] < mark) {
				from++;
			}
			chosen[rim] = states[from].clone();
			chosenLogs[rim] = logs[from];
		}
		states = chosen;
		logs = chosenLogs;
	}

	/** In halves: each half moves by differences within the other, which stands still meanwhile. */
	private void move(int times) {
		shuffle();
		int half = count / 2;
		double[] proposal = new double[weights.layout().size()];
		for (int sweep = 0; sweep < times; sweep++) {
			for (int rim = 0; rim < count; rim++) {
				proposal = move(rim, rim < half ? half : 0, rim < half ? count - half : half, proposal);
			}
		}
	}

	/** @return an array that is free again */
	private double[] move(int rim, int others, int othersCount, double[] proposal) {
		double[] state = states[rim];
		double[] one = states[others + random.below(othersCount)];
		double[] other = states[others + random.below(othersCount)];
		double stride = stride();
		double prior = 0;
		for (int i = 0; i < proposal.length; i++) {
			proposal[i] = state[i] + stride * (one[i] - other[i]);
		}
		for (int normal = 0; normal < weights.layout().normals(); normal++) {
			prior += state[normal] * state[normal] - proposal[normal] * proposal[normal];
		}
		double log = weights.weigh(proposal);
		double gain = prior / 2 + letIn * (log - logs[rim]);
		if (gain >= 0 || random.uniform() < StrictMath.exp(gain)) {
			states[rim] = proposal;
			logs[rim] = log;
			return state;
		}
		return proposal;
	}

	/** Near 2.38 / √(2 d), the best for a normal shape; now and then a whole difference, to change from peak to peak. */
	private double stride() {
		double mark = random.uniform();
		if (mark < 0.1) {
			return 1;
		}
		double best = 2.38 / Math.sqrt(2 * weights.layout().normals());
		return best * (0.3 + mark);
	}

	private void shuffle() {
		for (int rim = count - 1; rim > 0; rim--) {
			int other = random.below(rim + 1);
			double[] state = states[rim];
			states[rim] = states[other];
			states[other] = state;
			double log = logs[rim];
			logs[rim] = logs[other];
			logs[other] = log;
		}
	}
}
