package padwright.benchmarks.rounds;

import java.util.List;
import java.util.Locale;

import padwright.engine.bench.BenchWork.Told;

/**
 * Of the pads that were told a chance, how many were level then, in ten bins.
 *
 * @param told how many were told a chance in the bin
 * @param chances their sum
 * @param level how many of them were level
 */
record Calibration(int[] told, double[] chances, int[] level) {

	private static final int BINS = 10;
	private static final int SIDE = 300;
	private static final int MARGIN = 40;
	/** A bin with fewer says little. */
	private static final int ENOUGH = 100;

	static Calibration of(List<Told> answers) {
		int[] told = new int[BINS];
		double[] chances = new double[BINS];
		int[] level = new int[BINS];
		for (Told answer : answers) {
			int bin = Math.min(BINS - 1, (int) (answer.chance() * BINS));
			told[bin]++;
			chances[bin] += answer.chance();
			level[bin] += answer.level() ? 1 : 0;
		}
		return new Calibration(told, chances, level);
	}

	String table() {
		StringBuilder text = new StringBuilder("told chance: mean told, were level, of how many\n");
		for (int bin = 0; bin < BINS; bin++) {
			if (told[bin] > 0) {
				text.append(String.format(Locale.ROOT, "%d to %d %%: %.0f %% told, %.0f %% level, of %d%n", bin * 10,
						bin * 10 + 10, 100 * chances[bin] / told[bin], 100.0 * level[bin] / told[bin], told[bin]));
			}
		}
		return text.toString();
	}

	/** Chance told to the right, share that was level upward; on the line both agree. */
	String picture() {
		StringBuilder svg = new StringBuilder();
		svg.append(String.format("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\""
				+ " font-size=\"11\">%n", SIDE + 2 * MARGIN, SIDE + 2 * MARGIN));
		svg.append(String.format("<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>%n"));
		svg.append(String.format("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"none\" stroke=\"#888\"/>%n",
				MARGIN, MARGIN, SIDE, SIDE));
		svg.append(String.format("<line x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke=\"#bbb\"/>%n", MARGIN,
				MARGIN + SIDE, MARGIN + SIDE, MARGIN));
		for (int bin = 0; bin < BINS; bin++) {
			if (told[bin] >= ENOUGH) {
				svg.append(String.format(Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\" fill=\"#2a6f6f\"/>%n",
						MARGIN + SIDE * chances[bin] / told[bin],
						MARGIN + SIDE - SIDE * level[bin] / (double) told[bin]));
			}
		}
		svg.append(String.format("<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">chance told, 0 to 100 %%</text>%n",
				MARGIN + SIDE / 2, MARGIN + SIDE + 25));
		svg.append(String.format("<text transform=\"translate(%d %d) rotate(-90)\" text-anchor=\"middle\">were level,"
				+ " 0 to 100 %%</text>%n", MARGIN - 15, MARGIN + SIDE / 2));
		return svg.append("</svg>\n").toString();
	}
}
