package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Text;

/** A column of lines set one below the other. */
public final class Column {

	/** Of the em: from the top of a line to its baseline, and to the top of the next. */
	private static final double ASCENT = 0.86;
	private static final double LEADING = 1.16;

	private final Typesetter typesetter;
	private final double left;
	private final double width;
	private final List<Element> elements = new ArrayList<>();
	private double y;

	public Column(Typesetter typesetter, double left, double top, double width) {
		this.typesetter = typesetter;
		this.left = left;
		this.y = top;
		this.width = width;
	}

	/** Text over as many lines as it takes. */
	public void paragraph(String text, Face face, double size) {
		paragraph(text, face, size, 0, Integer.MAX_VALUE);
	}

	/** Text set in by {@code indent} over at most {@code most} lines. */
	public void paragraph(String text, Face face, double size, double indent, int most) {
		for (String line : typesetter.wrap(text, face, size, width - indent, most)) {
			elements.add(Text.of(line, left + indent, baseline(size), face, size));
			y += LEADING * size;
		}
	}

	/** A single line, made to fit. */
	public void line(String text, Face face, double size, double indent) {
		if (!text.isBlank()) {
			elements.add(typesetter.line(text, left + indent, baseline(size), face, size, width - indent));
		}
		y += LEADING * size;
	}

	/** A single line, smaller where that is enough; else over at most {@code most} lines. */
	public void figures(String text, Face face, double size, double indent, int most) {
		if (typesetter.fitsInOneLine(text, face, size, width - indent)) {
			line(text, face, size, indent);
		} else {
			paragraph(text, face, size, indent, most);
		}
	}

	/** Elements beside what follows. */
	public void add(Element element) {
		elements.add(element);
	}

	public void space(double height) {
		y += height;
	}

	/** The baseline of the next line in this size. */
	public double baseline(double size) {
		return y + ASCENT * size;
	}

	/** Where the next line begins. */
	public double y() {
		return y;
	}

	public double left() {
		return left;
	}

	public double width() {
		return width;
	}

	public List<Element> elements() {
		return List.copyOf(elements);
	}
}
