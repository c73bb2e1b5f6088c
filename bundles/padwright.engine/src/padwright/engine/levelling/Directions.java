package padwright.engine.levelling;

import java.util.ArrayList;
import java.util.List;

/**
 * The directions in which a residual is weighed: one station against another, waves of one to three crests around the
 * clock, and crests against troughs. Any would be valid; these are the ones in which few candidates can help.
 */
final class Directions {

	private static final int STATIONS = CandidatePieces.STATIONS;
	private static final int HOURS = STATIONS / 2;
	private static final int STEEPEST = 8;
	private static final int[] CRESTS_ON_STATIONS = {2, 3, 4, 6};

	/** One station against another: by station of the plus within its hour, then by that of the minus. */
	private final Direction[][] pairs = new Direction[2][STATIONS];
	private final List<Wave> waves = new ArrayList<>();

	private record Wave(Direction direction, int turns) {
	}

	Directions(CandidatePieces candidates) {
		for (int plus = 0; plus < 2; plus++) {
			for (int minus = 0; minus < STATIONS; minus++) {
				if (plus != minus) {
					int[] weights = new int[STATIONS];
					weights[plus] = 1;
					weights[minus] = -1;
					pairs[plus][minus] = new Direction(weights, candidates);
				}
			}
		}
		for (int crests = 1; crests <= 3; crests++) {
			for (int crestAt = 0; crestAt < 2; crestAt++) {
				waves.add(new Wave(new Direction(wave(crests, crestAt), candidates), HOURS / crests));
			}
		}
		for (int crests : CRESTS_ON_STATIONS) {
			for (int crestAt = 0; crestAt < 2; crestAt++) {
				waves.add(new Wave(new Direction(crestsOnly(crests, crestAt), candidates), HOURS / crests));
			}
		}
	}

	/** The stations at the crests of a wave against those at its troughs: for what a stiff base lets through least. */
	private static int[] crestsOnly(int crests, int crestAt) {
		int[] weights = new int[STATIONS];
		for (int crest = 0; crest < crests; crest++) {
			weights[(crestAt + crest * STATIONS / crests) % STATIONS] = 1;
			weights[(crestAt + (2 * crest + 1) * STATIONS / crests / 2) % STATIONS] = -1;
		}
		return weights;
	}

	/** A wave in whole numbers; crests and troughs round alike, so they sum to zero. */
	static int[] wave(int crests, int crestAt) {
		int[] weights = new int[STATIONS];
		for (int station = 0; station < STATIONS; station++) {
			double angle = 2 * Math.PI * crests * (station - crestAt) / STATIONS;
			weights[station] = (int) Math.rint(STEEPEST * StrictMath.cos(angle));
		}
		return weights;
	}

	/** The direction in which fewest candidates are worth trying first. */
	Choice narrowest(int[] residual, int missing, int window) {
		Choice best = Choice.of(pairs[0][1], 0, residual, missing, window);
		for (int plus = 0; plus < STATIONS; plus++) {
			for (int minus = 0; minus < STATIONS; minus++) {
				if (residual[plus] - residual[minus] > window) {
					int turn = plus / 2;
					Direction direction = pairs[plus % 2][Math.floorMod(minus - 2 * turn, STATIONS)];
					best = best.orNarrower(Choice.of(direction, turn, residual, missing, window));
				}
			}
		}
		for (Wave wave : waves) {
			for (int turn = 0; turn < wave.turns(); turn++) {
				best = best.orNarrower(Choice.of(wave.direction(), turn, residual, missing, window));
			}
		}
		return best;
	}

	/** A turned direction, what the residual weighs in it, and how many candidates are worth trying. */
	record Choice(Direction direction, int turn, int weight, int missing, int count) {

		static Choice of(Direction direction, int turn, int[] residual, int missing, int window) {
			int weight = direction.weigh(residual, 0, turn);
			long excess = weight - (long) direction.norm() * window;
			return new Choice(direction, turn, weight, missing, direction.countTaking(share(excess, missing)));
		}

		/** The least that the one taking away most of {@code excess} must take: an equal share, rounded up. */
		private static long share(long excess, int missing) {
			return -Math.floorDiv(-excess, missing);
		}

		Choice orNarrower(Choice other) {
			return other.count < count ? other : this;
		}

		/** The least spread that can be reached if no piece takes away more than {@code most}; may be negative. */
		long leastSpread(int most) {
			return -Math.floorDiv((long) missing * most - weight, direction.norm());
		}
	}
}
