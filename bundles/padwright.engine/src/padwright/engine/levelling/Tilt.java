package padwright.engine.levelling;

/**
 * How far a lift or residual leans toward each hour, as a weighted sum of its stations.
 *
 * <p>A lift that leans toward 12 o'clock at least as much as toward 1 and 11 can level a residual to a spread of u only
 * if the residual, too, leans toward 12 at least as much less {@link #slack} · u: the difference of two leanings is a
 * weighted sum with weights that sum to zero (see {@link Direction}), and lift and residual differ by no more than a
 * profile of spread u.
 */
final class Tilt {

	private static final int STATIONS = Candidates.STATIONS;
	private static final int HOURS = STATIONS / 2;
	private static final int[] WEIGHTS = Directions.wave(1, 0);
	private static final int SLACK = slackBetweenNeighbours();

	private final Candidates candidates;
	private final int[] towardTwelve;

	Tilt(Candidates candidates) {
		this.candidates = candidates;
		this.towardTwelve = new int[candidates.count()];
		for (int id = 0; id < towardTwelve.length; id++) {
			towardTwelve[id] = weigh(candidates.lifts(), id * STATIONS, 0);
		}
	}

	/** The leaning of each candidate toward 12 o'clock. Shared: read only. */
	int[] ofCandidates() {
		return towardTwelve;
	}

	/** The leanings of a residual toward 12, 1, 2 … 11 o'clock. */
	static int[] of(int[] residual) {
		int[] tilt = new int[HOURS];
		for (int hour = 0; hour < HOURS; hour++) {
			tilt[hour] = weigh(residual, 0, hour);
		}
		return tilt;
	}

	/** The leanings that a piece leaves of {@code tilt}, into {@code left}. */
	void take(int id, int[] tilt, int[] left) {
		for (int hour = 0; hour < HOURS; hour++) {
			left[hour] = tilt[hour] - towardTwelve[candidates.turned(id, (HOURS - hour) % HOURS)];
		}
	}

	/** Whether lifts that are highest toward {@code hour} can level a residual of these leanings to {@code window}. */
	static boolean mayLevel(int[] tilt, int hour, int window) {
		int least = tilt[hour] + SLACK * window;
		return least >= tilt[hour == 0 ? HOURS - 1 : hour - 1] && least >= tilt[hour == HOURS - 1 ? 0 : hour + 1];
	}

	private static int weigh(int[] values, int offset, int hours) {
		int sum = 0;
		for (int station = 0; station < STATIONS; station++) {
			int turned = station + 2 * hours;
			sum += WEIGHTS[station] * values[offset + (turned >= STATIONS ? turned - STATIONS : turned)];
		}
		return sum;
	}

	private static int slackBetweenNeighbours() {
		int slack = 0;
		for (int station = 0; station < STATIONS; station++) {
			slack += Math.max(0, WEIGHTS[station] - WEIGHTS[(station + 2) % STATIONS]);
		}
		return slack;
	}
}
