package padwright.engine.evidence;

import java.util.Arrays;

/** Many possible rims, each with the logarithm of the probability of all that was felt. Changes; for one thread. */
final class RimCrowd {

	private final RimWeights weights;
	private double[][] states;
	private double[] logs;

	/** Rims as they may be before anything is felt. */
	RimCrowd(RimWeights weights, int count, RandomStream random) {
		this.weights = weights;
		states = new double[count][];
		logs = new double[count];
		for (int rim = 0; rim < count; rim++) {
			states[rim] = weights.layout().draw(random);
			logs[rim] = weights.weigh(states[rim]);
		}
	}

	RimWeights weights() {
		return weights;
	}

	int count() {
		return states.length;
	}

	double[] state(int rim) {
		return states[rim];
	}

	double[][] states() {
		return states;
	}

	double log(int rim) {
		return logs[rim];
	}

	/** @return the state that stood there, free to be written over */
	double[] replace(int rim, double[] state, double log) {
		double[] former = states[rim];
		states[rim] = state;
		logs[rim] = log;
		return former;
	}

	/** How many equal rims these are worth when the readings are let in by so much more: (Σw)² / Σw². */
	double worth(double step) {
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
		return Arrays.stream(logs).max().orElseThrow();
	}

	/** Each rim as often as its weight asks when the readings are let in by so much more, by systematic resampling. */
	void letIn(double step, RandomStream random) {
		double greatest = greatestLog();
		int count = count();
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

	void shuffle(RandomStream random) {
		for (int rim = count() - 1; rim > 0; rim--) {
			int other = random.below(rim + 1);
			double log = logs[other];
			states[rim] = replace(other, states[rim], logs[rim]);
			logs[rim] = log;
		}
	}
}
