package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.words.Messages;

/** What every foot has: a rule over it, and the number of the page in its lower right corner. */
public final class FootRule {

	/** Of the number and the words above it, mm. */
	public static final double SIZE = 2.5;

	/** Room for the number, mm. */
	public static final double NUMBER_HEIGHT = SIZE * 1.3;

	private FootRule() {
	}

	/** A foot of {@code content} that is {@code contentHeight} high. */
	public static Part around(List<Element> content, double contentHeight, double width, int page, int pages) {
		double height = contentHeight + NUMBER_HEIGHT;
		List<Element> elements = new ArrayList<>(content);
		elements.add(new Drawn(new Line(0, 0, width, 0), Style.stroked(Ink.BLACK, 0.4)));
		elements.add(Text.of(Messages.of("page.of", page, pages), width, height - SIZE * 0.3, Face.BOLD, SIZE * 1.1)
				.anchored(Anchor.END));
		return new FixedPart(height, elements);
	}
}
