package padwright.engine.seating;

import java.util.stream.IntStream;

import padwright.engine.evidence.LikelyStiffness;

/**
 * Tells quickly which rims a lift can level at most, from its waves alone.
 *
 * <p>Where a lift levels a rim to within a width, what is left open, g, lies between nothing and the width at each
 * station. Any sum Σ cᵢ gᵢ then lies between width · Σ min(cᵢ, 0) and width · Σ max(cᵢ, 0); and if Σ cᵢ wᵢ = 0, with w
 * the weights of the hinge, it does not depend on how far the key turns: it is the sum over the clearance less that over
 * the lift. So the waves of the lift lie in a disc (saddle, three lobes) or a strip (tilt) about those of the clearance.
 * A wave of the lift is that of a limp pad times the pad's transmission.
 */
final class Screen {

	private static final int STATIONS = PossibleRims.STATIONS;
	/** For the rounding of sums, in nm summed over the stations. */
	private static final double ROUNDING = STATIONS;
	/** Means of lifts beyond this, in nm, are not screened by their tilt to and from the hinge. */
	private static final double HIGHEST_MEAN = 60_000;

	private final WavePlane saddle;
	private final WavePlane lobes;
	private final WavePlane side;
	private final WavePlane front;
	private final double[][] waves;
	/** Of the actions, by wave. */
	private final double[][] lifted = new double[LiftWaves.COUNT][];
	private final double[] base = new double[LiftWaves.COUNT];

	Screen(PossibleRims rims, LikelyStiffness stiffness, ActionTable actions, double width) {
		for (int wave = 0; wave < lifted.length; wave++) {
			int at = wave;
			lifted[wave] = IntStream.range(0, actions.count()).mapToDouble(id -> actions.waves(id)[at]).toArray();
		}
		waves = new double[rims.count()][];
		for (int rim = 0; rim < rims.count(); rim++) {
			waves[rim] = LiftWaves.of(rims.rim(rim).clearance());
		}
		saddle = discs(rims, stiffness, 2, width);
		lobes = discs(rims, stiffness, 3, width);
		side = sides(width);
		front = fronts(rims, width);
	}

	private WavePlane discs(PossibleRims rims, LikelyStiffness stiffness, int order, double width) {
		double radius = width * greatestPositiveSum(order) + ROUNDING;
		double[][] discs = new double[rims.count()][];
		for (int rim = 0; rim < discs.length; rim++) {
			double share = stiffness.at(rims.rim(rim).stiffnessNode()).transmission(order);
			discs[rim] = new double[] { waves[rim][LiftWaves.cosineOf(order)] / share,
					waves[rim][LiftWaves.sineOf(order)] / share, radius / share };
		}
		WavePlane plane = planeAround(discs);
		for (int rim = 0; rim < discs.length; rim++) {
			plane.addDisc(rim, discs[rim][0], discs[rim][1], discs[rim][2]);
		}
		return plane;
	}

	private static WavePlane planeAround(double[][] discs) {
		double[] box = { Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE };
		for (double[] disc : discs) {
			box[0] = Math.min(box[0], disc[0] - disc[2]);
			box[1] = Math.max(box[1], disc[0] + disc[2]);
			box[2] = Math.min(box[2], disc[1] - disc[2]);
			box[3] = Math.max(box[3], disc[1] + disc[2]);
		}
		return new WavePlane(box[0], box[1], box[2], box[3]);
	}

	/** The greatest Σ max(cos(nθ − ψ), 0) over any ψ: at a crest or halfway between two stations. */
	private static double greatestPositiveSum(int order) {
		double greatest = 0;
		for (int shift = 0; shift < 2 * STATIONS; shift++) {
			double sum = 0;
			for (int station = 0; station < STATIONS; station++) {
				double angle = 2 * Math.PI * (order * station + shift / (double) STATIONS) / STATIONS;
				sum += Math.max(0, StrictMath.cos(angle));
			}
			greatest = Math.max(greatest, sum);
		}
		// Between the shifts tried the sum is higher by less than one part in a thousand.
		return greatest * 1.001;
	}

	/** From side to side: sin θ is blind to the turning of the key and passes whole through any pad. */
	private WavePlane sides(double width) {
		double reach = width * greatestPositiveSum(1) + ROUNDING;
		double[][] strips = new double[waves.length][];
		for (int rim = 0; rim < strips.length; rim++) {
			strips[rim] = new double[] { waves[rim][LiftWaves.sineOf(1)], 0, reach };
		}
		WavePlane plane = planeAround(strips);
		for (int rim = 0; rim < strips.length; rim++) {
			plane.addStrip(rim, 0, strips[rim][0] - reach, strips[rim][0] + reach);
		}
		return plane;
	}

	/** To and from the hinge: cos θ + r/2 is blind to the turning of a key of reach r. */
	private WavePlane fronts(PossibleRims rims, double width) {
		double[] halfReach = new double[rims.count()];
		double[] low = new double[rims.count()];
		double[] high = new double[rims.count()];
		double farthest = 0;
		for (int rim = 0; rim < rims.count(); rim++) {
			halfReach[rim] = (1 - rims.rim(rim).weights()[0]) / 2;
			double value = waves[rim][LiftWaves.cosineOf(1)] + halfReach[rim] * waves[rim][LiftWaves.MEAN];
			double positive = positiveSum(halfReach[rim]);
			low[rim] = value - width * positive - ROUNDING;
			high[rim] = value + width * (positive - STATIONS * halfReach[rim]) + ROUNDING;
			farthest = Math.max(farthest, Math.max(Math.abs(low[rim]), Math.abs(high[rim])));
		}
		double mean = HIGHEST_MEAN * STATIONS;
		WavePlane plane = new WavePlane(-farthest - mean / 2, farthest + mean / 2, -mean, mean);
		for (int rim = 0; rim < rims.count(); rim++) {
			plane.addStrip(rim, halfReach[rim], low[rim], high[rim]);
		}
		return plane;
	}

	/** Σ max(cos θ + shift, 0); Σ min(cos θ + shift, 0) is this less 24 · shift, turned round. */
	private static double positiveSum(double shift) {
		double sum = 0;
		for (int station = 0; station < STATIONS; station++) {
			sum += Math.max(0, LiftWaves.cosine(1, station) + shift);
		}
		return sum;
	}

	/** From now on, actions come on top of these. */
	void goOnFrom(int[] ids) {
		for (int wave = 0; wave < base.length; wave++) {
			base[wave] = 0;
			for (int id : ids) {
				base[wave] += lifted[wave][id];
			}
		}
	}

	/** The rims that one more action may level, as bits; none at all if fewer than {@code least} by any one wave. */
	long mayLevel(int action, int least) {
		int bySaddle = saddle.cell(base[3] + lifted[3][action], base[4] + lifted[4][action], least);
		if (bySaddle < 0) {
			return 0;
		}
		int bySide = side.cell(base[2] + lifted[2][action], 0, least);
		if (bySide < 0) {
			return 0;
		}
		int byLobes = lobes.cell(base[5] + lifted[5][action], base[6] + lifted[6][action], least);
		if (byLobes < 0) {
			return 0;
		}
		int byFront = front.cell(base[1] + lifted[1][action], base[0] + lifted[0][action]);
		long all = saddle.set(bySaddle) & side.set(bySide) & lobes.set(byLobes);
		return byFront < 0 ? all : all & front.set(byFront);
	}
}
