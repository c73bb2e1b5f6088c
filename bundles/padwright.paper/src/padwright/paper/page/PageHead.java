package padwright.paper.page;

import java.util.ArrayList;
import java.util.List;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;

/** The head of a page: heading and subline on each, the facts of the job on the first. */
public final class PageHead {

	private static final double NAME = 6.4;
	private static final double PLAN = 3.4;
	private static final double FACT = 3;
	private static final int FACT_COLUMNS = 3;
	private static final double GUTTER = 3;

	private final HeadText text;
	private final Typesetter typesetter;
	private final double width;

	public PageHead(HeadText text, Typesetter typesetter, double width) {
		this.text = text;
		this.typesetter = typesetter;
		this.width = width;
	}

	public Part first() {
		Part letterhead = LetterheadPart.of(text.letterhead(), typesetter, width);
		List<Element> elements = new ArrayList<>(title());
		double top = titleHeight() + 1.5;
		for (int first = 0; first < text.facts().size(); first += FACT_COLUMNS) {
			top += facts(elements, first, top);
		}
		return letterhead.height() == 0 ? new FixedPart(top + 1.5, elements)
				: new FixedPart(letterhead.height() + top + 1.5, List.of(Group.of(letterhead.draw(letterhead.height())),
						Group.of(elements).at(0, letterhead.height())));
	}

	public Part following() {
		return new FixedPart(titleHeight() + 2, title());
	}

	private static double titleHeight() {
		return NAME + PLAN * 1.4 + 1;
	}

	private List<Element> title() {
		double baseline = NAME * 0.8;
		double planBaseline = NAME + PLAN;
		Text right = typesetter.line(text.right(), width, baseline, Face.BOLD, NAME * 0.75, width * 0.35)
				.anchored(Anchor.END);
		double rightWidth = typesetter.metrics().width(right);
		List<Element> elements = new ArrayList<>();
		elements.add(typesetter.line(text.heading(), 0, baseline, Face.BOLD, NAME, width - rightWidth - GUTTER));
		if (!text.right().isEmpty()) {
			elements.add(right);
		}
		elements.add(typesetter.line(text.subline(), 0, planBaseline, Face.REGULAR, PLAN, width));
		elements.add(new Drawn(new Line(0, titleHeight(), width, titleHeight()), Style.stroked(Ink.BLACK, 0.7)));
		return elements;
	}

	/** Adds one line of facts and gives its height. */
	private double facts(List<Element> elements, int first, double top) {
		double columnWidth = (width - (FACT_COLUMNS - 1) * GUTTER) / FACT_COLUMNS;
		double bottom = top;
		for (int i = first; i < Math.min(first + FACT_COLUMNS, text.facts().size()); i++) {
			PageFact fact = text.facts().get(i);
			Column column = new Column(typesetter, (i - first) * (columnWidth + GUTTER), top, columnWidth);
			column.line(fact.label(), Face.CONDENSED, FACT * 0.82, 0);
			column.paragraph(fact.value(), Face.CONDENSED_BOLD, FACT, 0, 2);
			elements.addAll(column.elements());
			bottom = Math.max(bottom, column.y());
		}
		return bottom - top + 0.8;
	}
}
