package padwright.paper.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.engine.quote.Labour;
import padwright.engine.quote.Money;
import padwright.engine.quote.Quote;
import padwright.paper.page.Column;
import padwright.paper.page.FixedPart;
import padwright.paper.page.FootRule;
import padwright.paper.page.PageHead;
import padwright.paper.page.PageSeries;
import padwright.paper.page.PaperSize;
import padwright.paper.page.Part;
import padwright.paper.page.Typesetter;

/** Lays a quote out: its lines and sums, what is in no sum, and cautions at the foot. */
public final class QuotePages {

	private static final double HEADING = 4.8;
	private static final double TEXT = 3.6;
	private static final double ROW = 6;
	private static final double INDENT = 4;
	/** Right edges of count, price and amount, from the right edge of the page, mm. */
	private static final double COUNT = 56;
	private static final double EACH = 28;

	private final QuoteSheet sheet;
	private final PaperSize paper;
	private final double width;
	private final Typesetter typesetter = new Typesetter(new DejaVuMetrics());

	public QuotePages(QuoteSheet sheet, PaperSize paper) {
		this.sheet = sheet;
		this.paper = paper;
		this.width = PageSeries.width(paper);
	}

	/** One page, or as many as the lines take. */
	public List<Scene> pages() {
		List<Part> parts = new ArrayList<>();
		parts.add(row(List.of("", "count", "each", "amount"), Face.CONDENSED_BOLD, 0.4));
		Quote quote = sheet.quote();
		quote.lines().forEach(line -> parts.add(row(List.of(line.article(), String.valueOf(line.count()),
				Money.text(line.price()), Money.text(line.amount())), Face.REGULAR, 0.1)));
		parts.add(sums(quote));
		addList("In no sum, since it has no price", quote.unpriced(), parts);
		addList("Found besides, and in no sum", sheet.work(), parts);
		return new PageSeries(paper, new PageHead(sheet.head(), typesetter, width), this::foot)
				.pages(sheet.title(), parts, false);
	}

	/** The sums stay together. */
	private Part sums(Quote quote) {
		List<Part> rows = new ArrayList<>();
		rows.add(sum("parts, film and glue", quote.parts(), Face.REGULAR));
		if (!quote.labour().equals(Labour.NONE)) {
			rows.add(sum(quote.labour().minutes().toPlainString() + " minutes at " + Money.text(quote.labour().rate())
					+ " an hour", quote.labour().amount(), Face.REGULAR));
		}
		rows.add(sum("net", quote.net(), Face.REGULAR));
		rows.add(sum("tax " + quote.taxPercent().toPlainString() + " %", quote.tax(), Face.REGULAR));
		rows.add(sum("total", quote.total(), Face.BOLD));
		List<Element> elements = new ArrayList<>();
		double top = ROW / 2;
		for (Part row : rows) {
			elements.add(Group.of(row.draw(row.height())).at(0, top));
			top += row.height();
		}
		return new FixedPart(top, elements);
	}

	private Part sum(String words, BigDecimal amount, Face face) {
		return row(List.of(words, "", "", Money.text(amount)), face, face.isBold() ? 0.5 : 0.1);
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

	private void addList(String heading, List<String> lines, List<Part> parts) {
		for (int line = 0; line < lines.size(); line++) {
			Column column = new Column(typesetter, 0, 0, width);
			if (line == 0) {
				column.space(HEADING * 0.8);
				column.line(heading, Face.BOLD, HEADING, 0);
				column.space(1);
			}
			column.add(Text.of("•", 0.5, column.baseline(TEXT), Face.REGULAR, TEXT));
			column.paragraph(lines.get(line), Face.REGULAR, TEXT, INDENT, Integer.MAX_VALUE);
			parts.add(new FixedPart(column.y() + 1, column.elements()));
		}
	}

	private Part foot(int page, int pages) {
		Column column = new Column(typesetter, 0, 1.2, width);
		column.paragraph("In the currency of the shop's prices. Each amount is rounded to hundredths, halves up; the tax "
				+ "is rounded once, on the net sum.", Face.CONDENSED, FootRule.SIZE);
		sheet.cautions().forEach(text -> column.paragraph(text, Face.CONDENSED, FootRule.SIZE));
		return FootRule.around(column.elements(), column.y(), width, page, pages);
	}
}
