package padwright.paper.money;

import java.math.BigDecimal;
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
import padwright.paper.page.FixedPart;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;
import padwright.paper.words.Messages;
import padwright.workup.report.Figures;

/** Rows of what something costs: words, how many, each, amount. */
public final class MoneyRows {

	private static final char MINUS = '\u2212';
	private static final double TEXT = 3.6;
	private static final double ROW = 6;
	/** Right edges of count and price, from the right edge of the page, mm. */
	private static final double COUNT = 56;
	private static final double EACH = 28;

	private final Typesetter typesetter;
	private final double width;

	public MoneyRows(Typesetter typesetter, double width) {
		this.typesetter = typesetter;
		this.width = width;
	}

	/** The row above the others; {@code currency} may be empty. */
	public Part head(String currency) {
		return row(List.of("", Messages.of("money.count"), Messages.of("money.each"),
				currency.isEmpty() ? Messages.of("money.amount") : Messages.of("money.amountIn", currency)), Face.CONDENSED_BOLD, 0.4);
	}

	public Part line(String words, String count, BigDecimal each, BigDecimal amount) {
		return row(List.of(words, count, Figures.money(each), Figures.money(amount)), Face.REGULAR, 0.1);
	}

	/** A sum; the one to be paid in bold. */
	public Part sum(String words, BigDecimal amount, Face face) {
		return row(List.of(words, "", "", Figures.money(amount).replace('-', MINUS)), face, face.isBold() ? 0.5 : 0.1);
	}

	/** Rows that no page parts. */
	public static Part together(List<Part> rows) {
		List<Element> elements = new ArrayList<>();
		double top = ROW / 2;
		for (Part row : rows) {
			elements.add(Group.of(row.draw(row.height())).at(0, top));
			top += row.height();
		}
		return new FixedPart(top, elements);
	}

	private Part row(List<String> cells, Face face, double rule) {
		double baseline = ROW * 0.7;
		List<Element> elements = new ArrayList<>();
		List<Double> rights = List.of(0.0, width - COUNT, width - EACH, width);
		if (!cells.get(0).isEmpty()) {
			elements.add(typesetter.line(cells.get(0), 0, baseline, face, TEXT, width - COUNT - 12));
		}
		for (int column = 1; column < cells.size(); column++) {
			if (!cells.get(column).isEmpty()) {
				elements.add(Text.of(cells.get(column), rights.get(column), baseline, face, TEXT).anchored(Anchor.END));
			}
		}
		elements.add(new Drawn(new Line(0, ROW, width, ROW), Style.stroked(Ink.grey(90), rule)));
		return new FixedPart(ROW, elements);
	}
}
