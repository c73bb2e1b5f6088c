package padwright.views.bench;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Text;

/**
 * Text that fills a box: as large as it is wished, broken into lines, and smaller where it would not go in.
 *
 * @param size of the em, mm
 */
record FittedText(List<String> lines, Face face, double size) {

	static final double LINE = 1.22;
	private static final double SMALLER = 0.93;
	private static final DejaVuMetrics METRICS = new DejaVuMetrics();

	/** One line or more. */
	static FittedText of(String text, Face face, double wished, double width, double height) {
		double size = wished;
		FittedText fitted = broken(text, face, size, width);
		while (!fitted.fits(width, height) && size > 1) {
			size *= SMALLER;
			fitted = broken(text, face, size, width);
		}
		return fitted;
	}

	/** A single line. */
	static FittedText line(String text, Face face, double wished, double width) {
		double full = width(text, face, wished);
		return new FittedText(List.of(text), face, full <= width ? wished : wished * width / full);
	}

	private static FittedText broken(String text, Face face, double size, double width) {
		List<String> lines = new ArrayList<>();
		String line = "";
		for (String word : text.split(" ")) {
			String longer = line.isEmpty() ? word : line + " " + word;
			if (!line.isEmpty() && width(longer, face, size) > width) {
				lines.add(line);
				longer = word;
			}
			line = longer;
		}
		lines.add(line);
		return new FittedText(lines, face, size);
	}

	private boolean fits(double width, double height) {
		return height() <= height && lines.stream().allMatch(line -> width(line, face, size) <= width);
	}

	double height() {
		return lines.size() * size * LINE;
	}

	static double width(String text, Face face, double size) {
		return text.isEmpty() ? 0 : METRICS.width(Text.of(text, 0, 0, face, size));
	}
}
