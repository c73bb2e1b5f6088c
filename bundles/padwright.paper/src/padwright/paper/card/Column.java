package padwright.paper.card;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Text;

/** A column of lines set one below the other. */
final class Column {

	/** Of the em: from the top of a line to its baseline, and to the top of the next. */
	private static final double ASCENT = 0.86;
	private static final double LEADING = 1.16;

	private final Typesetter typesetter;
	private final double left;
	private final double width;
	private final List<Element> elements = new ArrayList<>();
	private double y;

	Column(Typesetter typesetter, double left, double top, double width) {
		this.typesetter = typesetter;
		this.left = left;
		this.y = top;
		this.width = width;
	}

	/** Text over as many lines as it takes. */
	void paragraph(String text, Face face, double size) {
		paragraph(text, face, size, 0, Integer.MAX_VALUE);
	}

	/** Text set in by {@code indent} over at most {@code most} lines. */
	void paragraph(String text, Face face, double size, double indent, int most) {
		for (String line : typesetter.wrap(text, face, size, width - indent, most)) {
			elements.add(Text.of(line, left + indent, baseline(size), face, size));
			y += LEADING * size;
		}
	}

	/** A single line, made to fit. */
	void line(String text, Face face, double size, double indent) {
		if (!text.isBlank()) {
			elements.add(typesetter.line(text, left + indent, baseline(size), face, size, width - indent));
		}
		y += LEADING * size;
	}

	/** Elements beside what follows. */
	void add(Element element) {
		elements.add(element);
	}

	void space(double height) {
		y += height;
	}

	/** The baseline of the next line in this size. */
	double baseline(double size) {
		return y + ASCENT * size;
	}

	/** Where the next line begins. */
	double y() {
		return y;
	}

	double left() {
		return left;
	}

	double width() {
		return width;
	}

	List<Element> elements() {
		return List.copyOf(elements);
	}
}
