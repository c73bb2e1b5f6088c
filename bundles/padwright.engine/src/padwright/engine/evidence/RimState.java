package padwright.engine.evidence;

import padwright.engine.clock.ClockHour;

/**
 * How one possible rim, with one possible pad, arm and hand, is laid out in an array: first what is standard normal
 * before anything is felt, then the clearance that follows from it, so that a sum of rims is the rim of the sum.
 */
final class RimState {

	static final int STATIONS = ClockHour.STATIONS;
	/** Amplitudes of the undulations: cosine and sine of each. */
	static final int AMPLITUDES = 2 * RimPrior.ORDERS;
	static final int STIFFNESS = AMPLITUDES;
	static final int REACH = AMPLITUDES + 1;
	static final int FEEL = AMPLITUDES + 2;
	static final int ROUGHNESS = AMPLITUDES + 3;
	/** From here on, how far the key was held off in each round in which nothing dragged. */
	static final int HELD_OFF = AMPLITUDES + 4;

	private final double[][] waves;
	private final int heldOffRounds;
	private final int pieces;

	/** For stations counted from the side of the hinge. */
	RimState(RimPrior prior, int heldOffRounds, int pieces) {
		this.heldOffRounds = heldOffRounds;
		this.pieces = pieces;
		waves = new double[AMPLITUDES][STATIONS];
		for (int order = 1; order <= RimPrior.ORDERS; order++) {
			for (int station = 0; station < STATIONS; station++) {
				double angle = 2 * Math.PI * (order * station % STATIONS) / STATIONS;
				waves[2 * order - 2][station] = prior.deviation(order) * StrictMath.cos(angle);
				waves[2 * order - 1][station] = prior.deviation(order) * StrictMath.sin(angle);
			}
		}
	}

	/** How many standard normal numbers there are. */
	int normals() {
		return HELD_OFF + heldOffRounds + pieces;
	}

	/** Where the state says how far a piece slipped when it was placed. */
	int slip(int piece) {
		return HELD_OFF + heldOffRounds + piece;
	}

	/** Length of the array. */
	int size() {
		return normals() + STATIONS;
	}

	double[] draw(RandomStream random) {
		double[] state = new double[size()];
		for (int normal = 0; normal < normals(); normal++) {
			state[normal] = random.normal();
		}
		addClearance(state);
		return state;
	}

	/** Adds to the clearance of a state what its amplitudes make of it. */
	void addClearance(double[] state) {
		for (int amplitude = 0; amplitude < AMPLITUDES; amplitude++) {
			for (int station = 0; station < STATIONS; station++) {
				state[normals() + station] += state[amplitude] * waves[amplitude][station];
			}
		}
	}
}
