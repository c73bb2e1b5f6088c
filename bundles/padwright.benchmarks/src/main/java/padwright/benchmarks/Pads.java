package padwright.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;
import padwright.engine.levelling.Levelling;
import padwright.engine.levelling.LevellingProblem;
import padwright.engine.levelling.Stiffness;
import padwright.engine.rim.RimProfile;

/** Seeded pads to measure with: invented readings in half thou, joined by waves as a fitted profile is. */
public final class Pads {

	/** Usual film thicknesses in half thou (0.5 to 7.5 thou is common practice, no source). */
	public static final int[] USUAL = {1, 2, 3, 4, 6, 8, 10, 15};
	/** Every half thou up to 7.5. */
	public static final int[] EVERY = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15};
	static final Length SEAT_WITHIN = Length.thou("0.5");
	private static final double[] STIFFNESSES = {0.003, 0.03, 0.1};
	private static final int[] READINGS = {4, 6, 8, 12};
	private static final int HALF_THOU = 12_700;
	private static final int STATIONS = 24;

	private final SplittableRandom random;

	public Pads(long seed) {
		random = new SplittableRandom(seed);
	}

	/** A pad read at 4, 6, 8 or 12 hours, of one of three stiffnesses. */
	public LevellingProblem next(int[] films, Length tolerance, int maxPieces) {
		int readings = READINGS[random.nextInt(READINGS.length)];
		return next(readings, films, tolerance, maxPieces);
	}

	/** A pad read at so many hours. */
	public LevellingProblem next(int readings, int[] films, Length tolerance, int maxPieces) {
		Stiffness stiffness = new Stiffness(STIFFNESSES[random.nextInt(STIFFNESSES.length)]);
		return new LevellingProblem(gap(readings), stiffness, stock(films), tolerance, maxPieces);
	}

	/** Pads that take exactly {@code pieces} pieces, to be seated within half a thou. */
	public List<LevellingProblem> needing(int pieces, int[] films, int count) {
		List<LevellingProblem> pads = new ArrayList<>();
		while (pads.size() < count) {
			LevellingProblem pad = next(films, SEAT_WITHIN, LevellingProblem.MOST_PIECES);
			if (Levelling.solve(pad).pieces().size() == pieces) {
				pads.add(pad);
			}
		}
		return pads;
	}

	static List<FilmSupply> stock(int[] halfThou) {
		return Arrays.stream(halfThou)
				.mapToObj(half -> FilmSupply.unlimited(new Length((long) half * HALF_THOU))).toList();
	}

	/** Tilted, saddled and rough, each at random: up to about 4 thou between lowest and highest. */
	private RimProfile gap(int readings) {
		double tilt = random.nextDouble() * 3;
		double tiltedTo = random.nextDouble() * 2 * Math.PI;
		double saddle = random.nextDouble() * 2;
		double saddledTo = random.nextDouble() * 2 * Math.PI;
		double[] read = new double[readings];
		for (int reading = 0; reading < readings; reading++) {
			double angle = 2 * Math.PI * reading / readings;
			double halves = 8 + tilt * Math.cos(angle - tiltedTo) + saddle * Math.cos(2 * angle - saddledTo)
					+ random.nextDouble() * 2 - 1;
			read[reading] = Math.rint(halves) * HALF_THOU;
		}
		long[] gap = new long[STATIONS];
		Arrays.setAll(gap, station -> Math.round(joined(read, 2 * Math.PI * station / STATIONS)));
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
}
