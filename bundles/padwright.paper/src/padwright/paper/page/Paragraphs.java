package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Face;
import padwright.drawing.scene.Text;

/** Paragraphs under a heading, each with a dot before it. */
public final class Paragraphs {

	private static final double INDENT = 4;
	private static final double BETWEEN = 1;

	private final Typesetter typesetter;
	private final double width;
	private final double headingSize;
	private final double textSize;

	/** Sizes in mm. */
	public Paragraphs(Typesetter typesetter, double width, double headingSize, double textSize) {
		this.typesetter = typesetter;
		this.width = width;
		this.headingSize = headingSize;
		this.textSize = textSize;
	}

	/** Nothing for no lines. The heading stays with the first paragraph; an empty one takes no room. */
	public List<Part> parts(String heading, List<String> lines) {
		List<Part> parts = new ArrayList<>();
		for (int line = 0; line < lines.size(); line++) {
			Column column = new Column(typesetter, 0, 0, width);
			if (line == 0) {
				column.space(headingSize * 0.7);
				if (!heading.isEmpty()) {
					column.line(heading, Face.BOLD, headingSize, 0);
					column.space(BETWEEN);
				}
			}
			column.add(Text.of("•", 0.5, column.baseline(textSize), Face.REGULAR, textSize));
			column.paragraph(lines.get(line), Face.REGULAR, textSize, INDENT, Integer.MAX_VALUE);
			parts.add(new FixedPart(column.y() + BETWEEN, column.elements()));
		}
		return parts;
	}
}
