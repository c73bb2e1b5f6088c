package padwright.engine.seating;

/**
 * The waves of a profile or lift that decide whether it can be level, as sums over the stations counted from the side of
 * the hinge: Σ z, then Σ z cos nθ and Σ z sin nθ for tilt, saddle and three lobes. Sums of lifts have the sums of their
 * waves.
 */
final class LiftWaves {

	static final int MEAN = 0;
	static final int HIGHEST_ORDER = 3;
	static final int COUNT = 2 * HIGHEST_ORDER + 1;
	private static final int STATIONS = PossibleRims.STATIONS;
	private static final double[] COSINE = new double[STATIONS];

	static {
		for (int station = 0; station < STATIONS; station++) {
			int mirrored = Math.min(station, STATIONS - station);
			COSINE[station] = StrictMath.cos(2 * Math.PI * mirrored / STATIONS);
		}
	}

	private LiftWaves() {
	}

	/** Where Σ z cos nθ stands. */
	static int cosineOf(int order) {
		return 2 * order - 1;
	}

	/** Where Σ z sin nθ stands. */
	static int sineOf(int order) {
		return 2 * order;
	}

	static double cosine(int order, int station) {
		return COSINE[Math.floorMod(order * station, STATIONS)];
	}

	static double sine(int order, int station) {
		return COSINE[Math.floorMod(order * station - STATIONS / 4, STATIONS)];
	}

	static double[] of(double[] profile) {
		double[] waves = new double[COUNT];
		for (int station = 0; station < STATIONS; station++) {
			waves[MEAN] += profile[station];
			for (int order = 1; order <= HIGHEST_ORDER; order++) {
				waves[cosineOf(order)] += profile[station] * cosine(order, station);
				waves[sineOf(order)] += profile[station] * sine(order, station);
			}
		}
		return waves;
	}
}
