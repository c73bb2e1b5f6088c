package padwright.engine.evidence;

import java.util.Arrays;

import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * Moves a rim on an ellipse about the middle of others and through a rim drawn from the normal law that is nearest to
 * them, to wherever on it the rim is likely enough. Where their law is near a normal one, a rim hardly remembers where it
 * came from. (I. Murray, R. Adams and D. MacKay, Elliptical slice sampling, 2010; R. Nishihara, I. Murray and R. Adams,
 * Parallel MCMC with generalized elliptical slice sampling, 2014; both from memory.) Changes; for one thread.
 */
final class EllipseMove {

	/** The ellipses are a little wider than the others lie, since few far ones say little of the tails. */
	private static final double WIDER = 1.2;
	/** Added to each variance, so that others that lie in a plane have a law as well. */
	private static final double LEAST_VARIANCE = 1e-6;
	/** A slice this often cut lies at the rim itself. */
	private static final int MOST_TRIES = 40;

	private final RimCrowd crowd;
	private final RandomStream random;
	private final int normals;
	private final double[] middle;
	private final double[] away;
	private final double[] drawn;
	private final double[] awayInUnits;
	private final double[] drawnInUnits;
	private double[] proposal;
	private double[][] root;

	EllipseMove(RimCrowd crowd, RandomStream random) {
		this.crowd = crowd;
		this.random = random;
		RimState layout = crowd.weights().layout();
		normals = layout.normals();
		middle = new double[layout.size()];
		away = new double[layout.size()];
		drawn = new double[layout.size()];
		proposal = new double[layout.size()];
		awayInUnits = new double[normals];
		drawnInUnits = new double[normals];
	}

	/** Takes the law of some rims, none of which is moved until others are taken. */
	void take(int others, int othersCount) {
		for (int i = 0; i < middle.length; i++) {
			double sum = 0;
			for (int other = others; other < others + othersCount; other++) {
				sum += crowd.state(other)[i];
			}
			middle[i] = sum / othersCount;
		}
		root = new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance(others, othersCount))).getL().getData();
	}

	private double[][] covariance(int others, int othersCount) {
		double[][] covariance = new double[normals][normals];
		for (int other = others; other < others + othersCount; other++) {
			double[] state = crowd.state(other);
			for (int row = 0; row < normals; row++) {
				double share = WIDER * (state[row] - middle[row]) / othersCount;
				for (int column = 0; column <= row; column++) {
					covariance[row][column] += share * (state[column] - middle[column]);
				}
			}
		}
		for (int row = 0; row < normals; row++) {
			covariance[row][row] += LEAST_VARIANCE;
			for (int column = 0; column < row; column++) {
				covariance[column][row] = covariance[row][column];
			}
		}
		return covariance;
	}

	/** @param letIn how far the readings are let in, above 0 to 1 */
	void move(int rim, double letIn) {
		measure(crowd.state(rim));
		draw();
		double least = letIn * crowd.log(rim) + advantage(crowd.state(rim), 1, 0)
				+ StrictMath.log(1 - random.uniform());
		double angle = 2 * Math.PI * random.uniform();
		double low = angle - 2 * Math.PI;
		double high = angle;
		for (int tries = 0; tries < MOST_TRIES; tries++) {
			double leastLog = (least - propose(angle)) / letIn;
			double log = crowd.weights().weigh(proposal, leastLog);
			if (log >= leastLog) {
				proposal = crowd.replace(rim, proposal, log);
				return;
			}
			low = angle < 0 ? angle : low;
			high = angle < 0 ? high : angle;
			angle = low + (high - low) * random.uniform();
		}
	}

	/** How far the rim is from the middle, also in units of the law. */
	private void measure(double[] state) {
		for (int i = 0; i < away.length; i++) {
			away[i] = state[i] - middle[i];
		}
		for (int row = 0; row < normals; row++) {
			double left = away[row];
			for (int column = 0; column < row; column++) {
				left -= root[row][column] * awayInUnits[column];
			}
			awayInUnits[row] = left / root[row][row];
		}
	}

	private void draw() {
		Arrays.fill(drawn, 0);
		for (int row = 0; row < normals; row++) {
			drawnInUnits[row] = random.normal();
			for (int column = 0; column <= row; column++) {
				drawn[row] += root[row][column] * drawnInUnits[column];
			}
		}
		crowd.weights().layout().addClearance(drawn);
	}

	/** @return its advantage */
	private double propose(double angle) {
		double cosine = StrictMath.cos(angle);
		double sine = StrictMath.sin(angle);
		for (int i = 0; i < proposal.length; i++) {
			proposal[i] = middle[i] + away[i] * cosine + drawn[i] * sine;
		}
		return advantage(proposal, cosine, sine);
	}

	/** By how much a rim is likelier before anything is felt than by the law of the others, in logarithms, but for a sum. */
	private double advantage(double[] state, double cosine, double sine) {
		double prior = 0;
		double law = 0;
		for (int normal = 0; normal < normals; normal++) {
			double units = awayInUnits[normal] * cosine + drawnInUnits[normal] * sine;
			prior += state[normal] * state[normal];
			law += units * units;
		}
		return (law - prior) / 2;
	}
}
