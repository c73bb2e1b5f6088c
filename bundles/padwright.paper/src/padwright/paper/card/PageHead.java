package padwright.paper.card;

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

/** The head of a page: instrument and plan on each, the facts of the job on the first. */
final class PageHead {

	private static final double NAME = 6.4;
	private static final double PLAN = 3.4;
	private static final double FACT = 3;
	private static final int FACT_COLUMNS = 3;
	private static final double GUTTER = 3;

	private final BenchCard card;
	private final Typesetter typesetter;
	private final double width;

	PageHead(BenchCard card, Typesetter typesetter, double width) {
		this.card = card;
		this.typesetter = typesetter;
		this.width = width;
	}

	Part first() {
		List<Element> elements = new ArrayList<>(title());
		double top = titleHeight() + 1.5;
		for (int first = 0; first < card.facts().size(); first += FACT_COLUMNS) {
			top += facts(elements, first, top);
		}
		return new FixedPart(top + 1.5, elements);
	}

	Part following() {
		return new FixedPart(titleHeight() + 2, title());
	}

	private static double titleHeight() {
		return NAME + PLAN * 1.4 + 1;
	}

	private List<Element> title() {
		double baseline = NAME * 0.8;
		double planBaseline = NAME + PLAN;
		String serial = card.serial().isEmpty() ? "" : "serial " + card.serial();
		Text right = typesetter.line(serial, width, baseline, Face.BOLD, NAME * 0.75, width * 0.35)
				.anchored(Anchor.END);
		double serialWidth = typesetter.metrics().width(right);
		List<Element> elements = new ArrayList<>();
		elements.add(typesetter.line(card.instrument(), 0, baseline, Face.BOLD, NAME, width - serialWidth - GUTTER));
		if (!serial.isEmpty()) {
			elements.add(right);
		}
		String plan = card.title() + " · " + card.planName() + card.date().map(date -> " · " + date).orElse("");
		elements.add(typesetter.line(plan, 0, planBaseline, Face.REGULAR, PLAN, width));
		elements.add(new Drawn(new Line(0, titleHeight(), width, titleHeight()), Style.stroked(Ink.BLACK, 0.7)));
		return elements;
	}

	/** Adds one line of facts and gives its height. */
	private double facts(List<Element> elements, int first, double top) {
		double columnWidth = (width - (FACT_COLUMNS - 1) * GUTTER) / FACT_COLUMNS;
		double bottom = top;
		for (int i = first; i < Math.min(first + FACT_COLUMNS, card.facts().size()); i++) {
			CardFact fact = card.facts().get(i);
			Column column = new Column(typesetter, (i - first) * (columnWidth + GUTTER), top, columnWidth);
			column.line(fact.label(), Face.CONDENSED, FACT * 0.82, 0);
			column.paragraph(fact.value(), Face.CONDENSED_BOLD, FACT, 0, 2);
			elements.addAll(column.elements());
			bottom = Math.max(bottom, column.y());
		}
		return bottom - top + 0.8;
	}
}
