package padwright.engine.seating;

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
	private final int words;

	Screen(PossibleRims rims, LikelyStiffness stiffness, double width) {
		words = (rims.count() + 63) / 64;
		waves = new double[rims.count()][];
		for (int rim = 0; rim < rims.count(); rim++) {
			waves[rim] = LiftWaves.of(rims.rim(rim).clearance());
		}
		saddle = discs(rims, stiffness, 2, width);
		lobes = discs(rims, stiffness, 3, width);
		side = sides(width);
		front = fronts(rims, width);
	}

	int words() {
		return words;
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
		return new WavePlane(discs.length, box[0], box[1], box[2], box[3]);
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
		WavePlane plane = new WavePlane(rims.count(), -farthest - mean / 2, farthest + mean / 2, -mean, mean);
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

	/**
	 * The rims that the sum of two lifts may level, into {@code set}.
	 *
	 * @return how many, or -1 if fewer than {@code least}
	 */
	int mayLevel(double[] one, double[] other, int least, long[] set) {
		long[] bySaddle = enough(saddle, one[3] + other[3], one[4] + other[4], least);
		if (bySaddle == null) {
			return -1;
		}
		long[] bySide = enough(side, one[2] + other[2], 0, least);
		if (bySide == null) {
			return -1;
		}
		long[] byLobes = enough(lobes, one[5] + other[5], one[6] + other[6], least);
		if (byLobes == null) {
			return -1;
		}
		int byFront = front.cell(one[1] + other[1], one[0] + other[0]);
		return byFront < 0 ? inAll(bySaddle, bySide, byLobes, byLobes, least, set)
				: inAll(bySaddle, bySide, byLobes, front.set(byFront), least, set);
	}

	private static long[] enough(WavePlane plane, double x, double y, int least) {
		int cell = plane.cell(x, y);
		return cell < 0 || plane.count(cell) < least ? null : plane.set(cell);
	}

	private int inAll(long[] one, long[] two, long[] three, long[] four, int least, long[] set) {
		int count = 0;
		for (int word = 0; word < words; word++) {
			set[word] = one[word] & two[word] & three[word] & four[word];
			count += Long.bitCount(set[word]);
		}
		return count < least ? -1 : count;
	}
}
