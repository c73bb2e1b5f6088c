package padwright.benchmarks;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.length.Length;
import padwright.engine.levelling.Levelling;
import padwright.engine.levelling.LevellingProblem;

/** How the cost of a pad grows with readings, thicknesses and pieces when no tolerance lets the search end early. */
final class Growth {

	private static final int[] READINGS = {4, 6, 8, 12};
	private static final int[] FEW = {1, 2, 4, 8};
	private static final int[][] FILMS = {FEW, Pads.USUAL, Pads.EVERY};

	private Growth() {
	}

	static void print(int padsPerEntry) {
		System.out.println("Median ms per pad, least spread with at most so many pieces (catalogue of films warm)");
		System.out.printf("%-10s%12s%12s%12s%12s%12s%n", "readings", "thicknesses", "1 piece", "2 pieces", "3 pieces",
				"4 pieces");
		for (int readings : READINGS) {
			for (int[] films : FILMS) {
				StringBuilder line = new StringBuilder(String.format("%-10d%12d", readings, films.length));
				for (int pieces = 1; pieces <= LevellingProblem.MOST_PIECES; pieces++) {
					line.append(String.format("%12.3f", median(readings, films, pieces, padsPerEntry)));
				}
				System.out.println(line);
			}
		}
	}

	private static double median(int readings, int[] films, int pieces, int count) {
		Pads pads = new Pads(readings);
		List<Double> times = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			LevellingProblem pad = pads.next(readings, films, Length.ZERO, pieces);
			Levelling.solve(pad);
			times.add(Timing.of(() -> Levelling.solve(pad)).milliseconds());
		}
		return Timing.median(times);
	}
}
