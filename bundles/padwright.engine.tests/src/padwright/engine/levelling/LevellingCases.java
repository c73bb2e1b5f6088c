package padwright.engine.levelling;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

/** Seeded pads: invented readings, smoothly joined like a fitted profile, or rough. */
final class LevellingCases {

	/** The usual films, in half thou; 0.5 to 7.5 thou is common practice, no source. */
	static final int[] USUAL_HALF_THOU = {1, 2, 3, 4, 6, 8, 10, 15};
	private static final double[] STIFFNESSES = {0, 0.003, 0.03, 0.1, 0.3, 1};
	private static final int[] READINGS = {4, 6, 8, 12};
	private static final int HALF_THOU = 12_700;
	private static final int STATIONS = 24;

	private final SplittableRandom random;

	LevellingCases(long seed) {
		random = new SplittableRandom(seed);
	}

	/** Readings in half thou up to 5 thou at 4, 6, 8 or 12 hours, joined by waves; or 24 unrelated gaps. */
	RimProfile gap() {
		if (random.nextInt(8) == 0) {
			return RimProfile.ofNanometres(random.longs(STATIONS, 0, 5 * HALF_THOU).toArray());
		}
		int readings = READINGS[random.nextInt(READINGS.length)];
		int highest = random.nextInt(2, 11);
		double[] read = random.ints(readings, 0, highest).mapToDouble(halves -> halves * HALF_THOU).toArray();
		long[] gap = new long[STATIONS];
		for (int station = 0; station < STATIONS; station++) {
			gap[station] = Math.round(joined(read, 2 * Math.PI * station / STATIONS));
		}
		return RimProfile.ofNanometres(gap);
	}

	private static double joined(double[] read, double angle) {
		double sum = 0;
		for (int reading = 0; reading < read.length; reading++) {
			double from = angle - 2 * Math.PI * reading / read.length;
			double weight = 1;
			for (int n = 1; 2 * n <= read.length; n++) {
				weight += (2 * n == read.length ? 1 : 2) * Math.cos(n * from);
			}
			sum += read[reading] * weight / read.length;
		}
		return sum;
	}

	Stiffness stiffness() {
		return new Stiffness(random.nextInt(4) == 0 ? random.nextDouble()
				: STIFFNESSES[random.nextInt(STIFFNESSES.length)]);
	}

	/** Some of the usual films; in one case of three some are down to a few blanks, or none. */
	List<FilmSupply> films(int thicknesses) {
		List<Integer> halves = new ArrayList<>();
		for (int half : USUAL_HALF_THOU) {
			halves.add(half);
		}
		boolean limited = random.nextInt(3) == 0;
		List<FilmSupply> films = new ArrayList<>();
		for (int i = 0; i < thicknesses; i++) {
			int half = halves.remove(random.nextInt(halves.size()));
			int blanks = limited ? random.nextInt(4) : FilmSupply.UNLIMITED;
			films.add(new FilmSupply(new Length((long) half * HALF_THOU), blanks));
		}
		return films;
	}

	/** Nothing, which is seldom reached, to 1.5 thou in quarters. */
	Length tolerance() {
		return new Length(random.nextInt(7) * HALF_THOU / 2);
	}

	LevellingProblem problem(int thicknesses, int maxPieces) {
		return new LevellingProblem(gap(), stiffness(), films(thicknesses), tolerance(), maxPieces);
	}

	int next(int origin, int bound) {
		return random.nextInt(origin, bound);
	}
}
