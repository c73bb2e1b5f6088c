package padwright.engine.levelling;

/**
 * How strongly a lift or residual goes in waves around the clock: of one crest (tilt), two (saddle) and three, as
 * weighted sums of its stations with the crest at each hour. Sums of lifts have the sums of their waves.
 *
 * <p>Lift and residual that level to a spread of u differ by no more than a profile of spread u, so in any wave they
 * differ by at most {@link #slack} · u (the weights sum to zero; see {@link Direction}).
 */
final class Waves {

	/** Two waves for each number of crests, a part of the clock apart, tell waves of that many crests apart. */
	static final int AXES = 6;
	private static final int STATIONS = CandidatePieces.STATIONS;
	private static final int HOURS = STATIONS / 2;
	private static final int KINDS = 3;
	/** Values in a set: for each number of crests, crest at 12, 1, 2 … 11. */
	static final int COUNT = KINDS * HOURS;
	private static final int[] HOURS_APART = {3, 1, 1};
	private static final int[][] WEIGHTS = {Directions.wave(1, 0), Directions.wave(2, 0), Directions.wave(3, 0)};
	private static final int SLACK_BETWEEN_HOURS = slackBetweenHours();

	private final CandidatePieces candidates;
	private final int[][] crestAtTwelve;

	Waves(CandidatePieces candidates) {
		this.candidates = candidates;
		this.crestAtTwelve = new int[KINDS][candidates.count()];
		for (int kind = 0; kind < KINDS; kind++) {
			for (int id = 0; id < candidates.count(); id++) {
				crestAtTwelve[kind][id] = weigh(kind, candidates.lifts(), id * STATIONS, 0);
			}
		}
	}

	/** The waves of a profile. */
	static int[] of(int[] profile) {
		int[] waves = new int[COUNT];
		for (int wave = 0; wave < COUNT; wave++) {
			waves[wave] = weigh(wave / HOURS, profile, 0, wave % HOURS);
		}
		return waves;
	}

	/** The waves that a piece leaves of {@code waves}, into {@code left}. */
	void take(int id, int[] waves, int[] left) {
		for (int hour = 0; hour < HOURS; hour++) {
			int turnedBack = candidates.turned(id, (HOURS - hour) % HOURS);
			for (int kind = 0; kind < KINDS; kind++) {
				int wave = kind * HOURS + hour;
				left[wave] = waves[wave] - crestAtTwelve[kind][turnedBack];
			}
		}
	}

	/** The tilt of a candidate toward {@code hour}. */
	int tilt(int id, int hour) {
		return crestAtTwelve[0][candidates.turned(id, (HOURS - hour) % HOURS)];
	}

	/** Where the wave that belongs to an axis stands in a set of waves turned by {@code hours}. */
	static int position(int axis, int hours) {
		int kind = axis / 2;
		return kind * HOURS + (hours + axis % 2 * HOURS_APART[kind]) % HOURS;
	}

	/** The value of a profile on an axis. */
	static int onAxis(int axis, int[] values, int offset) {
		int position = position(axis, 0);
		return weigh(position / HOURS, values, offset, position % HOURS);
	}

	/** By how much, for each nm of spread, lift and residual may differ on an axis. */
	static int slack(int axis) {
		int slack = 0;
		for (int weight : WEIGHTS[axis / 2]) {
			slack += Math.max(0, weight);
		}
		return slack;
	}

	/**
	 * Whether lifts that tilt toward {@code hour} at least as much as toward the hours beside it can level a residual
	 * with these waves to {@code window}: then the residual does so too, but for the slack of the difference.
	 */
	static boolean mayLevel(int[] waves, int hour, int window) {
		int most = waves[hour] + SLACK_BETWEEN_HOURS * window;
		return most >= waves[hour == 0 ? HOURS - 1 : hour - 1] && most >= waves[hour == HOURS - 1 ? 0 : hour + 1];
	}

	private static int weigh(int kind, int[] values, int offset, int hours) {
		int[] weights = WEIGHTS[kind];
		int sum = 0;
		for (int station = 0; station < STATIONS; station++) {
			int turned = station + 2 * hours;
			sum += weights[station] * values[offset + (turned >= STATIONS ? turned - STATIONS : turned)];
		}
		return sum;
	}

	private static int slackBetweenHours() {
		int[] tilt = WEIGHTS[0];
		int slack = 0;
		for (int station = 0; station < STATIONS; station++) {
			slack += Math.max(0, tilt[station] - tilt[(station + 2) % STATIONS]);
		}
		return slack;
	}
}
