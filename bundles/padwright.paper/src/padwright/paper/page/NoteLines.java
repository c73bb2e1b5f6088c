package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.paper.words.Messages;

/** Lines to write on, where the last page has room to spare. */
final class NoteLines {

	/** Less room than this is left empty. */
	static final double LEAST = 22;

	private static final double HEADING = 4;
	private static final double SPACING = 8;

	private NoteLines() {
	}

	static List<Element> fill(double width, double height) {
		List<Element> elements = new ArrayList<>();
		elements.add(Text.of(Messages.of("page.notes"), 0, HEADING * 1.35, Face.BOLD, HEADING));
		for (double y = HEADING * 1.35 + SPACING; y <= height - 2; y += SPACING) {
			elements.add(new Drawn(new Line(0, y, width, y), Style.stroked(Ink.grey(130), 0.15)));
		}
		return elements;
	}
}
