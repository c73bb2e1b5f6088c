package padwright.paper.card;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Text;
import padwright.paper.card.BenchCard.DiaryLine;
import padwright.paper.page.FixedPart;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;

/** The diary of the job in two columns, read down the left one first. */
final class DiaryParts {

	private static final double HEADING = 4;
	private static final double LINE = 3.6;
	private static final double SIZE = 2.6;
	private static final double GUTTER = 4;
	/** So many lines stay together on a page. */
	private static final int TOGETHER = 40;

	private final Typesetter typesetter;
	private final double width;

	DiaryParts(Typesetter typesetter, double width) {
		this.typesetter = typesetter;
		this.width = width;
	}

	List<Part> of(List<DiaryLine> lines) {
		double when = lines.stream().mapToDouble(line -> typesetter.metrics().width(line.when(), Face.CONDENSED, SIZE)).max()
				.orElse(0);
		List<Part> parts = new ArrayList<>();
		for (int first = 0; first < lines.size(); first += TOGETHER) {
			parts.add(columns(lines.subList(first, Math.min(first + TOGETHER, lines.size())), when, first == 0));
		}
		return parts;
	}

	/** The first lines bring the heading along. */
	private Part columns(List<DiaryLine> lines, double when, boolean isFirst) {
		List<Element> elements = new ArrayList<>();
		double top = isFirst ? HEADING * 1.9 : 0;
		if (isFirst) {
			elements.add(Text.of(Messages.of("card.soFar"), 0, HEADING * 1.35, Face.BOLD, HEADING));
		}
		int rows = (lines.size() + 1) / 2;
		double column = (width + GUTTER) / 2;
		for (int line = 0; line < lines.size(); line++) {
			double left = line < rows ? 0 : column;
			double baseline = top + line % rows * LINE + LINE * 0.7;
			double indent = when == 0 ? 0 : when + SIZE * 0.8;
			elements.add(Text.of(lines.get(line).when(), left, baseline, Face.CONDENSED, SIZE));
			elements.add(typesetter.line(lines.get(line).words(), left + indent, baseline, Face.CONDENSED, SIZE,
					column - GUTTER - indent));
		}
		return new FixedPart(top + rows * LINE, elements);
	}
}
