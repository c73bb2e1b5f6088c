package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;
import padwright.drawing.scene.Text;

/** Fits text into the room there is. */
public record Typesetter(FontMetrics metrics) {

	private static final double SMALLEST = 0.72;
	private static final String ELLIPSIS = "…";

	/** The text broken into lines no wider than {@code width}; a word that is wider is broken too. */
	public List<String> wrap(String text, Face face, double size, double width) {
		List<String> lines = new ArrayList<>();
		if (text.isBlank()) {
			return lines;
		}
		StringBuilder line = new StringBuilder();
		for (String word : text.strip().split("\\s+")) {
			if (!line.isEmpty() && metrics.width(line + " " + word, face, size) > width) {
				lines.add(line.toString());
				line.setLength(0);
			}
			line.append(line.isEmpty() ? "" : " ").append(word);
			while (metrics.width(line.toString(), face, size) > width) {
				int end = fitting(line.toString(), face, size, width);
				lines.add(line.substring(0, end));
				line.delete(0, end);
			}
		}
		if (!line.isEmpty()) {
			lines.add(line.toString());
		}
		return lines;
	}

	/** At most {@code most} lines, the last of them cut with an ellipsis if there is more. */
	public List<String> wrap(String text, Face face, double size, double width, int most) {
		List<String> lines = wrap(text, face, size, width);
		if (lines.size() <= most) {
			return lines;
		}
		List<String> kept = new ArrayList<>(lines.subList(0, most));
		kept.set(most - 1, cut(kept.get(most - 1) + ELLIPSIS, face, size, width));
		return kept;
	}

	/** One line: smaller where it must be, cut with an ellipsis where that is not enough. */
	public Text line(String text, double x, double baseline, Face face, double size, double width) {
		double natural = metrics.width(text, face, size);
		double fitted = natural <= width ? size : size * Math.max(SMALLEST, width / natural * 0.999);
		return Text.of(cut(text, face, fitted, width), x, baseline, face, fitted);
	}

	/** Whether {@link #line} leaves nothing out. */
	boolean fitsInOneLine(String text, Face face, double size, double width) {
		return metrics.width(text, face, size) * SMALLEST <= width;
	}

	private String cut(String text, Face face, double size, double width) {
		if (metrics.width(text, face, size) <= width) {
			return text;
		}
		double room = width - metrics.width(ELLIPSIS, face, size);
		return text.substring(0, fitting(text, face, size, room)).stripTrailing() + ELLIPSIS;
	}

	/** How many chars from the start fit, at least one character. */
	private int fitting(String text, Face face, double size, double width) {
		int end = text.offsetByCodePoints(0, 1);
		while (end < text.length()) {
			int next = text.offsetByCodePoints(end, 1);
			if (metrics.width(text.substring(0, next), face, size) > width) {
				break;
			}
			end = next;
		}
		return end;
	}
}
